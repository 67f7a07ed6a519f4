import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

const [DEMO] = DEMO_BOARDS;
const BOARD = `board/${DEMO?.id}`;
const read = readBoardFile(DEMO?.text ?? "");
if (!read.ok) throw new Error("the demo board reads");
const { shape, sanding } = planBuild(read.board);

interface Opening {
  readonly width?: number;
  readonly light?: string;
  readonly script?: () => void;
}

async function openBoard({ width = 820, light = "paper", script }: Opening = {}): Promise<Page> {
  const context = await running.browser.newContext({
    viewport: { width, height: 900 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  await page.addInitScript((chosen) => {
    localStorage.setItem("lapline.light", chosen);
    localStorage.setItem("lapline.units", "mm");
  }, light);
  if (script !== undefined) await page.addInitScript(script);
  await page.goto(new URL(BOARD, running.app.address).href);
  await page.locator("#seal").waitFor();
  return page;
}

async function openSolid(page: Page, part: string): Promise<Locator> {
  const fold = page.locator(`#${part} .solid-fold`);
  await fold.getByRole("button", { name: /^The solid/ }).click();
  await fold.locator("canvas[data-drawn]").waitFor();
  return fold;
}

/** Colours of the canvas as it is seen, each with its share of the pixels. */
async function coloursOf(page: Page, canvas: Locator): Promise<Readonly<Record<string, number>>> {
  const png = (await canvas.screenshot()).toString("base64");
  return page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const sheet = document.createElement("canvas");
    [sheet.width, sheet.height] = [image.width, image.height];
    const pen = sheet.getContext("2d");
    pen?.drawImage(image, 0, 0);
    const pixels = pen?.getImageData(0, 0, image.width, image.height).data ?? [];
    const shares: Record<string, number> = {};
    for (let i = 0; i < pixels.length; i += 4) {
      const key = `${pixels[i]} ${pixels[i + 1]} ${pixels[i + 2]}`;
      shares[key] = (shares[key] ?? 0) + 4 / pixels.length;
    }
    return shares;
  }, png);
}

/** What the plan's outline has there, left over right, between its two nearest points. */
function leftOverRightM(fromTailM: number): number {
  const outline = shape?.outline ?? [];
  const next = outline.findIndex((point) => point.fromTailM >= fromTailM);
  const [a, b] = [outline[next - 1], outline[next]];
  if (a === undefined || b === undefined) throw new Error("the place is on the board");
  const share = (fromTailM - a.fromTailM) / (b.fromTailM - a.fromTailM);
  return a.leftM - a.rightM + share * (b.leftM - b.rightM - (a.leftM - a.rightM));
}

describe("the solid", () => {
  test("is drawn when it is opened, and tells at a touch what the plan has there", async () => {
    const page = await openBoard();
    expect(await page.locator("#measure canvas").count()).toBe(0);
    const fold = await openSolid(page, "measure");
    const canvas = fold.locator("canvas");
    await fold.getByRole("button", { name: "deck", exact: true }).click();
    await canvas.scrollIntoViewIfNeeded();
    const told = fold.locator(".solid-told");
    for (const [alongShare, sign] of [
      [0.15, 1],
      [0.3, -1],
      [0.9, 1],
    ] as const) {
      const box = await canvas.boundingBox();
      if (box === null) throw new Error("the canvas is seen");
      await page.mouse.move(box.x + box.width * alongShare, box.y + box.height / 2 - sign * 12);
      await told.getByText(sign > 0 ? /^Deck, left, .*\smm from/ : /^Deck, right, .*\smm from/).waitFor();
      const words = (await told.textContent()) ?? "";
      const [, millimetres = ""] = /, (\d+)\smm from the tail/.exec(words) ?? [];
      if (millimetres === "") throw new Error(words);
      const fullerM = sign * leftOverRightM(Number(millimetres) / 1000);
      const [, size = "0", unit, way] = /: ([\d.]+)\s(mm|µm) (fuller|narrower)/.exec(words) ?? [];
      const toldM = (Number(size) / (unit === "µm" ? 1e6 : 1e3)) * (way === "narrower" ? -1 : 1);
      expect(Math.abs(toldM - fullerM), words).toBeLessThan(0.0001);
    }
    const large = async () =>
      Object.values(await coloursOf(page, canvas)).filter((share) => share > 0.005).length;
    await expect.poll(large).toBeGreaterThan(3);
    await fold.getByRole("button", { name: "Close the solid" }).click();
    await expect.poll(() => page.locator("#measure canvas").count()).toBe(0);
    await page.context().close();
  });

  test("shows film and skin too, and the thinnest place as through", async () => {
    const page = await openBoard({ width: 360 });
    const sand = await openSolid(page, "sand");
    await sand.getByText("through: no film left").waitFor();
    const table = sand.getByRole("table", { name: "Film left at the rails" });
    await sand.getByText("The same as a table").click();
    const through = sanding?.places.filter(({ remainingM }) => remainingM < 0) ?? [];
    expect(through.length).toBeGreaterThan(0);
    await expect.poll(() => table.getByText(/^through, \d+ µm short$/).count()).toBeGreaterThan(0);
    await sand.getByLabel("In colour").selectOption("skin");
    await sand
      .getByRole("table", { name: "Thickness of the skin" })
      .getByText("under the back foot")
      .waitFor();
    const wider = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect(wider).toBe(false);
    await page.context().close();
  });

  test("is turned by keys alone, and tells the number of its middle", async () => {
    const page = await openBoard();
    const fold = await openSolid(page, "glass");
    const room = fold.getByRole("application");
    const drawn = async () => Number(await fold.locator("canvas").getAttribute("data-drawn"));
    const before = await drawn();
    await room.focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(drawn).toBeGreaterThan(before);
    await fold
      .locator(".solid-told")
      .getByText(/from the tail: skin \d/)
      .waitFor();
    const first = await coloursOf(page, fold.locator("canvas"));
    await page.keyboard.press("+");
    await page.keyboard.press("+");
    const seen = (colours: Readonly<Record<string, number>>) => 1 - Math.max(...Object.values(colours));
    await expect
      .poll(async () => seen(await coloursOf(page, fold.locator("canvas"))))
      .toBeGreaterThan(seen(first));
    await page.keyboard.press("Tab");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("whole board");
    await page.context().close();
  });

  test("says so where the browser draws no solids, and shows the table", async () => {
    const page = await openBoard({
      script: () => {
        HTMLCanvasElement.prototype.getContext = () => null;
      },
    });
    const fold = page.locator("#measure .solid-fold");
    await fold.getByRole("button", { name: /^The solid/ }).click();
    await fold.getByText("WebGL is missing").waitFor();
    const rows = fold.getByRole("table", { name: "Each side against the other" }).getByRole("row");
    await expect.poll(() => rows.count()).toBe(12);
    await page.context().close();
  });

  test.each(["paper", "night", "sun"])("is for everyone, in the light %s", async (light) => {
    const page = await openBoard({ light });
    await openSolid(page, "measure");
    await page.locator("#measure .solid-fold").getByText("The same as a table").click();
    const { violations } = await new AxeBuilder({ page }).include("#measure .solid-fold").analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await page.context().close();
  });
});
