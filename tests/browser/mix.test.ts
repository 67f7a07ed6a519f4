import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { Locator } from "playwright-core";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

const [DEMO] = DEMO_BOARDS;
const BOARD = `board/${DEMO?.id}`;
const CONTRADICTING = [
  { temperature: "15 C", dose: "1 %", gels: "74 min" },
  { temperature: "20 C", dose: "1 %", gels: "48 min" },
  { temperature: "25 C", dose: "1 %", gels: "58 min" },
];

/** Keeps the demo board with a resin of the builder's own and a hot shop, in which no fill coat can be mixed. */
async function keepHotBoard(): Promise<string> {
  const file = JSON.parse(DEMO?.text ?? "");
  file.glass.resin = "mine";
  file.materials = {
    resins: {
      mine: {
        kind: "peroxide",
        name: "shed polyester",
        dose: { least: "1 %", most: "2 %" },
        gel: CONTRADICTING,
      },
    },
  };
  file.shop.temperature = { day: "34 C", night: "28 C" };
  file.shop.resinTemperature = "34 C";
  const address = new URL("api/boards/hot-shop", running.app.address).href;
  const kept = await fetch(address, {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(file),
  });
  if (!kept.ok) throw new Error(await kept.text());
  return "board/hot-shop";
}

describe.each([360, 820, 1440])("the mix, %i wide", (width) => {
  test("shows each coat's cups and both its clocks, for everyone and within the page", async () => {
    const context = await running.browser.newContext({ viewport: { width, height: 900 } });
    const page = await context.newPage();
    await page.goto(new URL(BOARD, running.app.address).href);
    const mix = page.locator("#mix");
    await mix.getByRole("heading", { name: "The film on the board" }).first().waitFor();
    const coats = await mix.locator(".coats > li").count();
    expect(coats).toBeGreaterThan(4);
    expect(await mix.locator(".two-clocks").count()).toBe(coats);
    // The demo's laminate is on the board: its clock counts from the record.
    await mix.getByText("as recorded").waitFor();
    await mix.getByText("This is not a compliance calculation").waitFor();
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    const { violations } = await new AxeBuilder({ page }).include("#mix").analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await context.close();
  });
});

test("a coat that cannot be mixed has a crossed cup with its reason beside it, and odd gel points are drawn", async () => {
  const path = await keepHotBoard();
  const context = await running.browser.newContext({ viewport: { width: 820, height: 1180 } });
  const page = await context.newPage();
  await page.goto(new URL(path, running.app.address).href);
  const mix = page.locator("#mix");
  const refused = mix.locator(".coats > li", { hasText: "fill deck" });
  await refused.getByText("What would fit").waitFor();
  expect(await refused.locator(".two-clocks").count()).toBe(0);
  await mix.getByRole("heading", { name: "Gel points of shed polyester" }).waitFor();
  expect(await mix.getByText("read it again").count()).toBe(2);
  await context.close();
});

interface Axis {
  /** What a place on the sheet stands for. */
  read(at: number): number;
}

/** From what two places of a drawing are named. */
function axisOf(named: ReadonlyArray<readonly [at: number, value: number]>): Axis {
  const [first, last] = [named[0], named.at(-1)];
  if (first === undefined || last === undefined || first === last)
    throw new Error("an axis names two places");
  return {
    read: (at) => first[1] + ((at - first[0]) / (last[0] - first[0])) * (last[1] - first[1]),
  };
}

/** Reads a curve off its sheet as a person does, by the figures at its axes: kelvin to the right, time upwards in even factors. */
async function readGelCurve(drawing: Locator) {
  const { texts, curve } = await drawing.evaluate((svg) => ({
    texts: [...svg.querySelectorAll(".layer-axes text")].map((text) => ({
      x: Number(text.getAttribute("x")),
      y: Number(text.getAttribute("y")) - 0.35 * Number(text.getAttribute("font-size")),
      words: text.textContent ?? "",
    })),
    curve: svg.querySelector(".layer-band .pen-thick")?.getAttribute("d") ?? "",
  }));
  const across = texts.flatMap(({ x, words }) => {
    const [, celsius] = /^(\d+)\s°C$/.exec(words) ?? [];
    return celsius === undefined ? [] : [[x, Number(celsius) + 273.15] as const];
  });
  const up = texts.flatMap(({ y, words }) => {
    const [, count, unit] = /^(\d+)\s(min|h)$/.exec(words) ?? [];
    return count === undefined ? [] : [[y, Math.log(Number(count) * (unit === "h" ? 3600 : 60))] as const];
  });
  const [temperatures, times] = [axisOf(across), axisOf(up)];
  return [...curve.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
    temperatureK: temperatures.read(Number(x)),
    gelS: Math.exp(times.read(Number(y))),
  }));
}

test("a cup's gel over the temperature is drawn where the plan has it, by the figures at its axes", async () => {
  const read = readBoardFile(DEMO?.text ?? "");
  if (!read.ok) throw new Error("the demo board can be read");
  const coat = planBuild(read.board).mix?.coats.find(({ gelBand }) => gelBand.length > 1);
  if (coat === undefined) throw new Error("a coat gels");
  const context = await running.browser.newContext({ viewport: { width: 820, height: 1180 } });
  const page = await context.newPage();
  await page.addInitScript(() => window.localStorage.setItem("lapline.units", "mm"));
  await page.goto(new URL(BOARD, running.app.address).href);
  const fold = page.locator("#mix details", { hasText: "Colder or warmer" }).first();
  await fold.locator("summary").click();
  const drawing = fold.locator("svg.drawing");
  await drawing.waitFor();
  const curve = await readGelCurve(drawing);
  expect(curve).toHaveLength(coat.gelBand.length);
  for (const [i, { temperatureK, gelS }] of coat.gelBand.entries()) {
    expect(Math.abs((curve[i]?.temperatureK ?? 0) - temperatureK)).toBeLessThan(0.05);
    expect(Math.abs((curve[i]?.gelS ?? 0) / gelS - 1)).toBeLessThan(0.005);
  }
  await context.close();
});
