import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS } from "@lapline/contract";
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
