import { DEMO_BOARDS } from "@lapline/contract";
import { explain } from "@lapline/engine";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { planOf } from "../src/plan/planOf";
import { demoPlan } from "./demoPlan";
import { openSite, type Reader, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const QUAD = "five-ten-quad";
const openQuad = (reader: Reader = {}) => site.openBoard(QUAD, { hasWorker: false, ...reader });
const VOLUME = "shape.volumeM3";
const PHONE = { width: 360, height: 740 };

const numberAt = (page: Page, path: string) => page.locator(`[data-why="${path}"]`).first();

async function turnOver(page: Page, path: string) {
  await numberAt(page, path).focus();
  await page.keyboard.press("Enter");
  const drawer = page.getByRole("dialog");
  await drawer.getByRole("heading", { level: 2 }).waitFor();
  return drawer;
}

test("a number opens by keyboard on the back of its sheet, and Escape leads back to it", async () => {
  const page = await openQuad({ viewport: PHONE });
  const drawer = await turnOver(page, VOLUME);
  await drawer.getByText("added up along the board").waitFor();
  await drawer.getByText("Γ(1 + 1/n)").waitFor();
  await drawer.getByText("deck fullness", { exact: true }).waitFor();
  await drawer.getByRole("heading", { name: "Source" }).waitFor();
  // Worked out while the sheet can be read: thickness and section move a volume most.
  const found = drawer.locator('[aria-busy="false"] li');
  await found.first().waitFor();
  await expect.poll(() => found.count()).toBe(3);
  expect(await found.first().textContent()).toMatch(/ more makes it .* (more|less)\.$/);
  const width = await drawer.evaluate((element) => [element.scrollWidth, element.clientWidth]);
  expect(width[0]).toBe(width[1]);
  await page.keyboard.press("Escape");
  await drawer.waitFor({ state: "detached" });
  await expect
    .poll(() => page.evaluate(() => (document.activeElement as HTMLElement).dataset.why))
    .toBe(VOLUME);
  await page.context().close();
});

test("in German it has its words, its formula and its inputs", async () => {
  const page = await openQuad({ language: "de", units: "mm" });
  const drawer = await turnOver(page, "weight.finishedKg");
  await drawer.getByText("Das Board ohne Finnen, Wachs und Leash").waitFor();
  await drawer.getByText("Schaum + Stringer + Gewebe + Harz + Einbauten").waitFor();
  await drawer.getByRole("button", { name: "Schließen" }).click();
  await drawer.waitFor({ state: "detached" });
  await page.context().close();
});

describe.each(DEMO_BOARDS)("$id", ({ id, text }) => {
  test("every number of the page that can be turned over has a back", async () => {
    const read = planOf(text);
    if (!read.ok) throw new Error("a demo board must be readable");
    const page = await site.openBoard(id, { hasWorker: false });
    await page.locator("#water").waitFor();
    const paths = await page
      .locator("[data-why]")
      .evaluateAll((numbers) => numbers.map((each) => (each as HTMLElement).dataset.why ?? ""));
    expect(paths.length).toBeGreaterThan(100);
    const mute = paths.filter((path) => "message" in explain(read.board, read.plan, path));
    expect(mute).toEqual([]);
    const low = await page
      .locator("[data-why]:visible")
      .evaluateAll((numbers) => numbers.filter((each) => each.getBoundingClientRect().height < 24).length);
    expect(low).toBe(0);
    await page.context().close();
  });
});

/** The demo's quad with prices, and its fins measured as planned but for a millimetre. */
async function keepWholeBoard(): Promise<{ readonly id: string; readonly text: string }> {
  const { file, finset } = demoPlan();
  const mm = (valueM: number) => `${(valueM * 1000).toFixed(1)} mm`;
  const asSet = finset.marks.map(({ fin, side, trailing, leading }) => ({
    fin,
    ...(side === "centre" ? {} : { side }),
    trailing: { fromTail: mm(trailing.fromTailTapeM), fromCentreline: mm(trailing.fromCentrelineM + 0.001) },
    leading: { fromTail: mm(leading.fromTailTapeM), fromCentreline: mm(leading.fromCentrelineM) },
  }));
  const text = JSON.stringify({
    ...file,
    fins: { ...file.fins, asSet },
    shop: { ...file.shop, prices: { polyester: { price: 60, pack: "5 kg" } } },
  });
  const id = "turned-over";
  const kept = await fetch(new URL(`api/boards/${id}`, site.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: text,
  });
  if (!kept.ok) throw new Error(await kept.text());
  return { id, text };
}

test("cost, fins as set, the gate's readings, diagonals and waits have a back", async () => {
  const { id, text } = await keepWholeBoard();
  const read = planOf(text);
  if (!read.ok) throw new Error("the board must be readable");
  const page = await site.openBoard(id, { hasWorker: false });
  await page.locator("#water").waitFor();
  const paths = await page
    .locator("[data-why]")
    .evaluateAll((numbers) => numbers.map((each) => (each as HTMLElement).dataset.why ?? ""));
  expect(paths.filter((path) => "message" in explain(read.board, read.plan, path))).toEqual([]);
  for (const kind of [
    /^cost\.lines\[polyester\]\.mass\.onBoardKg$/,
    /^cost\.lines\[polyester\]\.packs$/,
    /^cost\.toBuy$/,
    /^finset\.asSet\[front-left\]\.trailingErrorM$/,
    /^finset\.asSetPairs\[front\]\.toeDifferRad$/,
    /^finset\.verify\.checks\[.*\]\.lengths\[.*\]\.targetM$/,
    /^finset\.verify\.checks\[.*\]\.lengths\[.*\]\.toleranceM$/,
    /^finset\.pairs\[front\]\.diagonals\[nose-trailing\]\.differM$/,
    /^steps\[.*\]\.needs\[.*\]\.waitS$/,
    /^steps\[.*\]\.handsOnS$/,
  ])
    expect(paths.find((path) => kind.test(path)) ?? String(kind)).toMatch(kind);
  const drawer = await turnOver(page, "cost.lines[polyester].packs");
  await drawer.getByText("Whole packs to buy").waitFor();
  await page.context().close();
});

test("a number of a house set that is only offered is told from the board with that set", async () => {
  const page = await openQuad();
  const fins = page.locator("#fins");
  await fins.getByLabel("House set, to see on this board").selectOption({ index: 1 });
  const offered = fins.locator(".offer").first().locator('[data-why^="finset.marks["]').first();
  const shown = (await offered.textContent()) ?? "";
  await offered.click();
  const drawer = page.getByRole("dialog");
  await drawer.getByRole("heading", { level: 2 }).waitFor();
  const told = (await drawer.locator(".why-value").textContent()) ?? "";
  // Without the sixteenths, which the back tells finer.
  const whole = (text: string) => /^\D*(\d+)/.exec(text)?.[1];
  expect(whole(told)).toBe(whole(shown));
  await page.context().close();
});

test("at the Bench a number to turn over is as large as a wet thumb needs", async () => {
  const page = await site.open(`board/${QUAD}/bench/mark-fins`, {
    viewport: { width: 320, height: 568 },
    clock: "2026-04-12T09:00:00",
  });
  await page.locator(".bench h1").waitFor();
  const first = page.locator("[data-why]").first();
  await first.waitFor();
  const box = await first.boundingBox();
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(56);
  await page.context().close();
});

test("each part opens its words, and one page has them all", async () => {
  const page = await openQuad({ viewport: PHONE });
  const open = page.locator("#fins").getByRole("button", { name: /^words/ });
  await open.focus();
  await page.keyboard.press("Enter");
  const drawer = page.getByRole("dialog");
  await drawer.getByText("how far a fin leans outwards, from square to the bottom").waitFor();
  await page.keyboard.press("Escape");
  await drawer.waitFor({ state: "detached" });
  await expect.poll(() => open.evaluate((button) => button === document.activeElement)).toBe(true);
  await open.click();
  await drawer.getByRole("link", { name: "All words on one page" }).click();
  await page.getByRole("heading", { level: 1, name: "Words" }).waitFor();
  await page.getByText("the strip of wood glued into the blank along its middle").waitFor();
  await page.context().close();
});

test("the Shed leads to all words", async () => {
  const page = await site.open("", { viewport: PHONE });
  await page.getByRole("link", { name: "Words", exact: true }).click();
  await page.getByRole("heading", { level: 1, name: "Words" }).waitFor();
  await page.context().close();
});
