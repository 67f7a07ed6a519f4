import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openSite, type Reader, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const QUAD = "five-ten-quad";
const openQuad = (reader: Reader = {}) => site.openBoard(QUAD, { hasWorker: false, ...reader });
/** A touch with a glove on. */
const GLOVE_PX = 56;

async function openDrawing(page: Page, name: RegExp) {
  const button = page.getByRole("button", { name }).first();
  await button.focus();
  await page.keyboard.press("Enter");
  const drawer = page.getByRole("dialog");
  const drawing = drawer.locator(".zoom-view svg.drawing");
  await drawing.waitFor();
  return { button, drawer, drawing };
}

const widthOf = (page: Page) =>
  page.locator(".zoom-view svg.drawing").evaluate((drawing) => drawing.getBoundingClientRect().width);
const rolledOf = (page: Page) =>
  page.locator(".zoom-view").evaluate(({ scrollLeft, scrollTop }) => [scrollLeft, scrollTop]);

test.each([360, 1440])(
  "%i wide: outline, fins, film and cloth open to be looked at closely",
  async (width) => {
    const page = await openQuad({ viewport: { width, height: 740 } });
    await page.locator("#water").waitFor();
    for (const part of ["measure", "fins", "sand", "cut"])
      await page
        .locator(`#${part}`)
        .getByRole("button", { name: /^look closer: / })
        .first()
        .waitFor();
    await page.context().close();
  },
);

test("plus, minus and nought, and the same by buttons; nothing of the page moves, and the focus goes back", async () => {
  const page = await openQuad({ viewport: { width: 360, height: 740 } });
  await page.locator("#water").waitFor();
  // Within its own place: what stands above may still be on its way.
  const boxOf = () =>
    page
      .locator("#fins figure")
      .first()
      .evaluate((figure: HTMLElement) => {
        if (figure.parentElement === null) throw new Error("it stands nowhere");
        const own = figure.getBoundingClientRect();
        const around = figure.parentElement.getBoundingClientRect();
        return [own.left - around.left, own.top - around.top, own.width, own.height].map(Math.round);
      });
  const { button, drawer } = await openDrawing(page, /^look closer: .*marking-out/);
  const before = await boxOf();
  const whole = await widthOf(page);
  await page.keyboard.press("+");
  await expect.poll(() => widthOf(page)).toBeCloseTo(whole * 1.5, 0);
  await drawer.getByRole("button", { name: "larger" }).click();
  await expect.poll(() => widthOf(page)).toBeCloseTo(whole * 2.25, 0);
  await drawer.getByText("225 %").waitFor();
  const sizes = await drawer
    .locator(".zoom-keys button")
    .evaluateAll((buttons) =>
      buttons.map((each) => each.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
    );
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(GLOVE_PX);
  await page.keyboard.press("-");
  await expect.poll(() => widthOf(page)).toBeCloseTo(whole * 1.5, 0);
  await page.keyboard.press("0");
  await expect.poll(() => widthOf(page)).toBeCloseTo(whole, 0);
  await expect.poll(boxOf).toEqual(before);
  await page.keyboard.press("Escape");
  await drawer.waitFor({ state: "detached" });
  await expect.poll(() => button.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.context().close();
});

test("a hand rolls it, and what stood in the middle stays there when it grows", async () => {
  const page = await openQuad();
  await page.locator("#water").waitFor();
  await openDrawing(page, /^look closer: .*marking-out/);
  for (const key of ["+", "+", "+"]) await page.keyboard.press(key);
  const view = page.locator(".zoom-view");
  const middle = () => view.evaluate((each) => (each.scrollLeft + each.clientWidth / 2) / each.scrollWidth);
  await expect.poll(middle).toBeCloseTo(0.5, 2);
  const box = await view.boundingBox();
  if (box === null) throw new Error("the view is there");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const [left = 0, top = 0] = await rolledOf(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 120, y - 80, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => ((await rolledOf(page))[0] ?? 0) - left).toBeCloseTo(120, -1);
  await expect.poll(async () => ((await rolledOf(page))[1] ?? 0) - top).toBeCloseTo(80, -1);
  const kept = await middle();
  await page.keyboard.press("+");
  await expect.poll(middle).toBeCloseTo(kept, 2);
  await page.context().close();
});

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** Puts fingers down, moves them together in a few steps, and lifts them, as the browser hears it from a touch screen. */
async function moveFingers(
  page: Page,
  fingers: ReadonlyArray<{ readonly from: Finger; readonly to: Finger }>,
): Promise<void> {
  const screen = await page.context().newCDPSession(page);
  const touch = (
    type: "touchStart" | "touchMove" | "touchEnd",
    touchPoints: Array<Finger & { id: number }>,
  ) => screen.send("Input.dispatchTouchEvent", { type, touchPoints });
  const at = (share: number) =>
    fingers.map(({ from, to }, id) => ({
      x: from.x + share * (to.x - from.x),
      y: from.y + share * (to.y - from.y),
      id,
    }));
  await touch("touchStart", at(0));
  for (const share of [0.25, 0.5, 0.75, 1]) await touch("touchMove", at(share));
  await touch("touchEnd", []);
  await screen.detach();
}

test("two fingers make it larger under themselves, one rolls it; on the page itself a finger rolls the page", async () => {
  const page = await site.openBoard(QUAD, { viewport: { width: 360, height: 740 }, isTouched: true });
  await page.locator("#water").waitFor();
  const { drawer, drawing } = await openDrawing(page, /^look closer: .*marking-out/);
  const view = await page.locator(".zoom-view").boundingBox();
  const before = await drawing.boundingBox();
  if (view === null || before === null) throw new Error("the drawing is there");
  const from = { x: view.x + view.width * 0.65, y: before.y + before.height * 0.5 };
  const to = { x: from.x - 30, y: from.y + 20 };
  // Apart to three times as far, while both move to the left and down.
  const spread = (by: number) => ({
    from: { x: from.x + 20 * by, y: from.y },
    to: { x: to.x + 60 * by, y: to.y },
  });
  await moveFingers(page, [spread(-1), spread(1)]);
  await expect.poll(() => widthOf(page)).toBeCloseTo(before.width * 3, -1);
  const after = await drawing.boundingBox();
  if (after === null) throw new Error("the drawing is there");
  expect((to.x - after.x) / after.width).toBeCloseTo((from.x - before.x) / before.width, 1.7);
  expect((to.y - after.y) / after.height).toBeCloseTo((from.y - before.y) / before.height, 1.7);
  const [left = 0, top = 0] = await rolledOf(page);
  await moveFingers(page, [{ from, to: { x: from.x + 40, y: from.y - 60 } }]);
  await expect.poll(async () => (await rolledOf(page))[0]).toBeCloseTo(left - 40, -1);
  expect((await rolledOf(page))[1]).toBeCloseTo(top + 60, -1);
  await page.keyboard.press("Escape");
  await drawer.waitFor({ state: "detached" });
  const figure = page.locator("#fins figure.sheet").first();
  await figure.scrollIntoViewIfNeeded();
  const box = await figure.boundingBox();
  if (box === null) throw new Error("the drawing is there");
  const rolled = await page.evaluate(() => window.scrollY);
  const onIt = { x: box.x + box.width / 2, y: Math.min(Math.max(box.y + box.height / 2, 250), 700) };
  await moveFingers(page, [{ from: onIt, to: { x: onIt.x, y: onIt.y - 150 } }]);
  await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(rolled + 50);
  await page.context().close();
});

test.each(["paper", "night", "sun"] as const)("is for everyone in %s light, in German", async (light) => {
  const page = await openQuad({ light, language: "de", units: "mm" });
  await page.locator("#water").waitFor();
  const { drawer } = await openDrawing(page, /^näher ansehen: /);
  await drawer.getByRole("button", { name: "größer" }).click();
  const { violations } = await new AxeBuilder({ page }).include("dialog").analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await page.context().close();
});
