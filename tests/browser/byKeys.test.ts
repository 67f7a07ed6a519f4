import { type BoardFile, DEMO_BOARDS } from "@lapline/contract";
import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { runForTests } from "./runForTests";
import { saved } from "./saved";

const running = runForTests();

/** The north shed's quad as a paper of readings. */
const PAPER = DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.file.survey;
/** In the order in which Tab comes by them. */
const READINGS = [
  ["left", "left"],
  ["right", "right"],
  ["thickness", "thick"],
  ["rocker", "rocker"],
] as const;

/** Stops that Tab may make on the way, at most: over a whole part with its tables. */
const FAR = 400;

const isFocused = (target: Locator): Promise<boolean> =>
  target.evaluate((each) => each === document.activeElement);

/** Presses Tab until the target has the focus, and sees that the focus can be seen there. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor({ state: "attached" });
  for (let stop = 0; stop < FAR && !(await isFocused(target)); stop += 1) await page.keyboard.press("Tab");
  const where = await page.evaluate(() => document.activeElement?.outerHTML.slice(0, 200));
  expect(await isFocused(target), `${target} is not reached by Tab, which stands at ${where}`).toBe(true);
  expect(await target.evaluate((each) => each.matches(":focus-visible"))).toBe(true);
}

async function press(page: Page, target: Locator): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press("Enter");
}

async function type(page: Page, target: Locator, text: string, isAtOnce = false): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press("ControlOrMeta+a");
  if (isAtOnce) await page.keyboard.insertText(text);
  else await page.keyboard.type(text);
  await expect.poll(() => target.inputValue()).toBe(text);
}

/** Answers that a list may have, at most. */
const LONG_LIST = 40;

/** A list is gone through from its first answer down. Letters would do too, but only where they come quickly one after another. */
async function choose(page: Page, target: Locator, value: string): Promise<void> {
  await tabTo(page, target);
  await page.keyboard.press("Home");
  for (let i = 0; i < LONG_LIST && (await target.inputValue()) !== value; i += 1)
    await page.keyboard.press("ArrowDown");
  await expect.poll(() => target.inputValue()).toBe(value);
}

/** From the build line to a part, as one who skips what lies between. */
async function skipTo(page: Page, part: string): Promise<void> {
  await press(page, page.locator(`.build-line a[href="#${part}"]`));
  await expect.poll(() => page.evaluate(() => window.location.hash)).toBe(`#${part}`);
}

async function beginBoard(page: Page): Promise<void> {
  await page.locator(".standing svg").first().waitFor();
  await press(page, page.getByRole("link", { name: "New board" }));
  await type(page, page.getByLabel("length"), "5'10\"");
  await choose(page, page.getByLabel("arrangement"), "quad");
  await type(page, page.getByLabel("name").first(), "by keys");
  await press(page, page.getByRole("button", { name: "Put it in the Shed" }));
  await page.getByRole("heading", { level: 1, name: "by keys" }).waitFor();
  await page.locator("#papers").waitFor();
}

async function takeReadings(page: Page): Promise<void> {
  const measure = page.locator("#measure");
  await skipTo(page, "measure");
  await choose(page, measure.getByLabel("tail", { exact: true }), "squash");
  await type(page, measure.getByLabel("tail width"), "5 in");
  for (const [i, station] of (PAPER?.stations ?? []).entries()) {
    // Every other one makes a board, and those between may stay empty.
    if (i % 2 === 1) continue;
    for (const [field, name] of READINGS)
      await type(
        page,
        measure.getByLabel(`station ${i + 1}, ${name}`, { exact: true }),
        station[field] ?? "",
        // Key by key in one row; a plan for every key of all the others tells nothing more.
        i > 0,
      );
  }
  await measure.getByRole("img", { name: /plan view/ }).waitFor();
}

async function markFirstStep(page: Page): Promise<void> {
  const step = page.locator("#water .steps > li").first();
  await press(page, step.getByRole("button", { name: "Mark done" }));
  // The form stands where the button was, and the keys are in it.
  await expect.poll(() => isFocused(step.getByLabel("Hands off at"))).toBe(true);
  await press(page, step.getByRole("button", { name: "Write it down" }));
  await step.and(page.locator(".done")).waitFor();
  await expect.poll(() => isFocused(step.getByRole("button", { name: "Change the mark" }))).toBe(true);
}

test("by keys alone: a new board, its readings, fins, cloth and shop, the dose, a step done, and its Sheet", async () => {
  const context = await running.browser.newContext({
    viewport: { width: 1440, height: 900 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  await page.goto(running.app.address);
  await beginBoard(page);
  await takeReadings(page);

  const fins = page.locator("#fins");
  await choose(page, fins.getByLabel("House set, to see on this board"), "generic-quad");
  await press(page, fins.getByRole("button", { name: "Put these numbers on the board" }).first());
  await fins
    .getByRole("img", { name: /marking-out/i })
    .first()
    .waitFor();

  const glass = page.locator("#glass");
  const deck = glass.getByRole("group", { name: "Deck's cloth" });
  const layers = deck.getByLabel(/^layer \d/);
  const pieces = glass.locator("tr", { hasText: /^Deck \d/i });
  // Its cloth is laid out once the part has had its turn after the readings.
  await pieces.first().waitFor();
  const before = { layers: await layers.count(), pieces: await pieces.count() };
  await choose(page, glass.getByLabel("finish"), "gloss");
  await press(page, deck.getByRole("button", { name: "add a layer" }));
  await expect.poll(() => layers.count()).toBe(before.layers + 1);
  await expect.poll(() => pieces.count()).toBe(before.pieces + 1);

  const mix = page.locator("#mix");
  await choose(page, mix.getByLabel("air in the shop"), "day-night");
  await type(page, mix.getByLabel("by day"), "21 C");
  await type(page, mix.getByLabel("by night"), "17 C");
  await type(page, mix.getByLabel("resin is at"), "20 C");
  await expect.poll(() => mix.locator(".cups .figures").first().textContent()).toMatch(/resin\s*\d+\sg/);

  await markFirstStep(page);
  await saved(page);
  const papers = page.locator("#papers");
  await press(page, papers.getByRole("button", { name: "Issue a Sheet (PDF)" }));
  const link = papers.getByRole("link", { name: "Sheet 1 (PDF)" });
  await link.waitFor();
  await tabTo(page, link);
  const sheet = await page.request.get(
    new URL((await link.getAttribute("href")) ?? "", running.app.address).href,
  );
  expect((await sheet.body()).subarray(0, 5).toString()).toBe("%PDF-");

  // All of it is at the shop's computer.
  const answer = await page.request.get(new URL("api/boards/by-keys", running.app.address).href);
  const kept = (await answer.json()) as BoardFile;
  expect(kept.survey.stations[0]?.left).toBe(PAPER?.stations[0]?.left);
  expect(kept.glass?.finish).toBe("gloss");
  expect(kept.record?.map(({ kind }) => kind)).toEqual(["done"]);

  // And it is there again.
  await page.reload();
  await papers.getByRole("link", { name: "Sheet 1 (PDF)" }).waitFor();
  await expect
    .poll(() => page.getByLabel("station 1, left", { exact: true }).inputValue())
    .toBe(PAPER?.stations[0]?.left);
  await context.close();
}, 600_000);
