import AxeBuilder from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { moveTo } from "../../../tests/browser/moveTo";
import { listClock } from "../src/bench/listClock";
import { planOf } from "../src/plan/planOf";
import { openSite, type Reader, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

const QUAD = "five-ten-quad";
const SMALL = { width: 320, height: 568 };
const PHONE = { width: 360, height: 740 };
const MORNING = "2026-04-12T09:00:00";
async function openBench(step: string, reader: Reader = {}, board = QUAD): Promise<Page> {
  const page = await site.open(`board/${board}/bench/${step}`, {
    clock: MORNING,
    hasWorker: false,
    ...reader,
  });
  await page.locator(".bench h1").waitFor();
  return page;
}

interface Entry {
  readonly id: string;
  readonly kind: string;
  readonly at?: string;
  readonly corrects?: string;
  readonly [field: string]: unknown;
}

const keptText = async (page: Page, board: string) =>
  (await page.request.get(new URL(`api/boards/${board}`, site.address).href)).text();

async function keptBoard(page: Page, board = QUAD) {
  const read = planOf(await keptText(page, board));
  if (!read.ok) throw new Error("what was kept cannot be read");
  return read;
}

/** The record as the shop's computer has it, once its last entry is one of that kind. */
async function recordWith(page: Page, last: string, board = QUAD): Promise<readonly Entry[]> {
  const record = async () => (JSON.parse(await keptText(page, board)).record ?? []) as readonly Entry[];
  await expect.poll(async () => (await record()).at(-1)?.kind).toBe(last);
  return record();
}

/** `09:04` on the morning of the tests. */
const clockOf = (atMs: number) => new Date(atMs).toTimeString().slice(0, 5);
const flat = (text: string | null) => (text ?? "").replace(/\s+/g, " ");

test("one touch starts the wet clock; its times survive a reload, ring as they come, and a fingertip moves them", async () => {
  const page = await openBench("laminate-deck#cup-1", { viewport: SMALL });
  await page.evaluate(() => {
    const counted = window as unknown as { tones: number };
    counted.tones = 0;
    const { createOscillator } = AudioContext.prototype;
    AudioContext.prototype.createOscillator = function () {
      counted.tones += 1;
      return createOscillator.call(this);
    };
  });
  await page.getByLabel("resin, as poured").fill("430 g");
  await page.getByRole("button", { name: "Hardener is in" }).click();
  const record = await recordWith(page, "mixed");
  expect(record.at(-1)).toMatchObject({ coat: "laminate-deck", base: "430 g" });
  expect(record.at(-1)?.at).toMatch(/^2026-04-12T09:0\d$/);

  const timesOf = async () => {
    const coat = (await keptBoard(page)).plan.mix?.coats.find(({ id }) => id === "laminate-deck");
    if (coat === undefined) throw new Error("the demo has its deck's laminate");
    return listClock(coat);
  };
  const times = await timesOf();
  const trim = times.find(({ kind }) => kind === "trim");
  if (trim === undefined) throw new Error("a laminate is trimmed");
  const shown = page.locator(".moment", { has: page.getByText("trim", { exact: true }) });
  await expect.poll(() => shown.locator(".moment-at").textContent()).toBe(clockOf(trim.atMs));
  await expect.poll(() => page.locator(".moment").count()).toBe(times.length);

  await page.clock.fastForward(trim.atMs - (await page.evaluate(() => Date.now())) + 2000);
  await page.getByRole("alert").getByText("trim", { exact: true }).waitFor();
  expect(await page.evaluate(() => (window as unknown as { tones: number }).tones)).toBeGreaterThan(0);
  await page.getByRole("button", { name: "Seen" }).click();
  await expect.poll(() => page.getByRole("alert").textContent()).toBe("");

  await page.reload();
  await page.locator(".moment").first().waitFor();
  await expect.poll(() => shown.locator(".moment-at").textContent()).toBe(clockOf(trim.atMs));
  // What rang once does not ring again.
  expect(await page.getByRole("alert").textContent()).toBe("");

  await page.getByRole("button", { name: "wet", exact: true }).click();
  await recordWith(page, "touched");
  const moved = (await timesOf()).find(({ kind }) => kind === "trim");
  expect(moved?.atMs).toBeGreaterThan(trim.atMs);
  await expect.poll(() => shown.locator(".moment-at").textContent()).toBe(clockOf(moved?.atMs ?? 0));
  await page.getByRole("button", { name: "A slip: strike it out" }).click();
  await recordWith(page, "struck");
  await expect.poll(() => shown.locator(".moment-at").textContent()).toBe(clockOf(trim.atMs));
  await page.context().close();
});

test("what came while the Bench was shut rings when it is opened again, and two coats stand in one list", async () => {
  const page = await openBench("laminate-bottom#cup-1", { viewport: PHONE }, "nine-two-long");
  await page.getByRole("button", { name: "Hardener is in" }).click();
  await recordWith(page, "mixed", "nine-two-long");
  await page.goto(new URL("board/nine-two-long/bench/laminate-deck#cup-1", site.address).href);
  await page.getByRole("button", { name: "Hardener is in" }).click();
  await expect.poll(() => page.locator(".clock").count()).toBe(2);
  // Both cups are where the Bench finds them again.
  const mixed = async () =>
    (await recordWith(page, "mixed", "nine-two-long")).filter(({ kind }) => kind === "mixed");
  await expect.poll(async () => (await mixed()).at(-1)?.coat).toBe("laminate-deck");
  await page.goto(new URL("icon.svg", site.address).href);
  await page.clock.fastForward("30:00");
  await page.goto(new URL("board/nine-two-long/bench", site.address).href);
  const alert = page.getByRole("alert");
  await alert.getByText("all spread").first().waitFor();
  await expect.poll(() => alert.getByRole("listitem").count()).toBeGreaterThanOrEqual(2);
  await page.context().close();
});

test("a step is marked done out of order, set right by later entries and never erased", async () => {
  const page = await openBench("trim-deck", { viewport: SMALL }, "six-four-tri");
  await page.getByRole("heading", { name: "Before it, and not done yet" }).waitFor();
  await page.getByRole("button", { name: "Done", exact: true }).click();
  const [done] = (await recordWith(page, "done", "six-four-tri")).slice(-1);
  expect(done).toMatchObject({ step: "trim-deck", at: expect.stringMatching(/^2026-04-12T09:0\d$/) });
  const line = page.getByRole("region", { name: "Done" });
  await line.getByText(/marked done before/).waitFor();
  await line.getByRole("button", { name: "Set it right" }).click();
  await line.getByRole("button", { name: "5 min earlier" }).click();
  await line.getByRole("button", { name: /^It was/ }).click();
  await expect
    .poll(async () => (await recordWith(page, "done", "six-four-tri")).at(-1)?.corrects)
    .toBe(done?.id);
  const [mended] = (await recordWith(page, "done", "six-four-tri")).slice(-1);
  const minutesOf = (entry: Entry | undefined) => Date.parse(entry?.at ?? "") / 60_000;
  expect(minutesOf(done) - minutesOf(mended)).toBe(5);
  await line.getByRole("button", { name: "Set it right" }).click();
  await line.getByRole("button", { name: "A slip: it is not done" }).click();
  const record = await recordWith(page, "struck", "six-four-tri");
  expect(record.map(({ kind }) => kind).slice(-3)).toEqual(["done", "done", "struck"]);
  await page.getByRole("button", { name: "Done", exact: true }).waitFor();
  await page.context().close();
});

test("the scale is read in by big keys, and the plan says at once what stayed on", async () => {
  const page = await openBench("laminate-bottom#weigh", { viewport: SMALL, keeps: false });
  await page.getByLabel(/^On the scale: laminate bottom/).click();
  const pad = page.getByRole("region", { name: /^Reading pad/ });
  for (const key of ["1", ".", "9", "5", "kg"])
    await pad.getByRole("button", { name: key === "." ? "decimal point" : key, exact: true }).click();
  await expect.poll(() => page.getByLabel(/^On the scale: laminate bottom/).inputValue()).toBe("1.95 kg");
  const box = await pad.boundingBox();
  expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(SMALL.height);
  expect(box?.y).toBeGreaterThan(0);
  await pad.getByRole("button", { name: "close" }).click();
  await page.getByRole("button", { name: "Write it down" }).click();
  await page.getByText(/^On the scale it was 1950 g/).waitFor();
  await expect
    .poll(async () => flat(await page.locator(".card .figures").textContent()))
    .toMatch(/resin kept.*of the plan/);
  await page.context().close();
});

test("by keys alone: on to the cup, the hardener in, back to the board", async () => {
  const page = await openBench("fill-bottom", { viewport: PHONE, keeps: false });
  const press = async (name: string | RegExp) => {
    await page.getByRole("button", { name }).focus();
    await page.keyboard.press("Enter");
  };
  await press(/^Cup 1/);
  const heading = page.getByRole("heading", { name: /^Cup 1/ });
  await expect.poll(() => heading.evaluate((each) => each === document.activeElement)).toBe(true);
  const isOnHardener = () =>
    page.evaluate(() => /^Hardener is in/.test(document.activeElement?.textContent ?? ""));
  // The cup's figures, which open to say why, and the two fields come before it.
  for (let stop = 0; stop < 8 && !(await isOnHardener()); stop += 1) await page.keyboard.press("Tab");
  expect(await isOnHardener()).toBe(true);
  await page.keyboard.press("Enter");
  const clock = page.getByRole("heading", { name: "Wet clock" });
  await expect.poll(() => clock.evaluate((each) => each === document.activeElement)).toBe(true);
  await page.getByRole("link", { name: "board" }).focus();
  await page.keyboard.press("Enter");
  await page.locator("#measure").waitFor();
  await page.context().close();
});

test("the screen is kept awake, and asked for again when the page comes back into sight", async () => {
  const page = await site.open("", {});
  await page.addInitScript(() => {
    const asked = window as unknown as { asked: number; release: () => void };
    asked.asked = 0;
    const request = async () => {
      asked.asked += 1;
      const lock = Object.assign(new EventTarget(), { release: async () => undefined });
      asked.release = () => void lock.dispatchEvent(new Event("release"));
      return lock;
    };
    Object.defineProperty(navigator, "wakeLock", { value: { request } });
  });
  await page.goto(new URL(`board/${QUAD}/bench`, site.address).href);
  await page.getByText("The screen stays on.").waitFor();
  await page.evaluate(() => (window as unknown as { release: () => void }).release());
  await page.getByText(/^This browser lets the screen go dark/).waitFor();
  const before = await page.evaluate(() => (window as unknown as { asked: number }).asked);
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  await page.getByText("The screen stays on.").waitFor();
  expect(await page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(before + 1);
  await page.context().close();
});

/** Every kind of screen. */
const SCREENS: ReadonlyArray<readonly [board: string, path: string]> = [
  [QUAD, "laminate-deck"],
  [QUAD, "laminate-deck#e-136-cut-2"],
  ["nine-two-long", "laminate-bottom#lay"],
  ["nine-two-long", "gloss-deck#cup-1"],
  [QUAD, "laminate-bottom#clock"],
  [QUAD, "laminate-bottom#weigh"],
  [QUAD, "mark-fins#mark-front-trailing"],
  [QUAD, "mark-fins#mark-rear-stand"],
  [QUAD, "set-boxes#gate-string-front-left"],
  [QUAD, "set-boxes#gate-depth-stop-front"],
  [QUAD, "set-leash-plug#plug"],
  [QUAD, "sand-deck#paper-P120"],
  [QUAD, "sand-deck#through"],
  [QUAD, "prep"],
  [QUAD, "water"],
];

async function goToScreen(page: Page, board: string, path: string): Promise<void> {
  await moveTo(page, `board/${board}/bench/${path}`);
  await page.locator(".bench h1").waitFor();
}

/** All of them in the sun, where it is hardest to see; of the other lights and widths a third each, all in all every one. */
function screensFor(light: "paper" | "night" | "sun", width: number) {
  if (light === "sun" && width === SMALL.width) return SCREENS;
  const turn = { paper: 0, night: 1, sun: 2 }[light];
  return SCREENS.filter((_, i) => i % 3 === turn);
}

describe.each(["paper", "night", "sun"] as const)("in %s light", (light) => {
  test.each([SMALL, PHONE])("its screens are clear of faults at $width", async (viewport) => {
    // The laminate's clock runs.
    const page = await openBench("prep", { viewport, light, clock: "2026-04-11T11:20:00", keeps: false });
    const faults: string[] = [];
    for (const [board, path] of screensFor(light, viewport.width)) {
      await goToScreen(page, board, path);
      const { violations } = await new AxeBuilder({ page })
        .options({ rules: { "color-contrast-enhanced": { enabled: true } } })
        .analyze();
      faults.push(...violations.map(({ id, nodes }) => `${path} ${id}: ${nodes[0]?.html}`));
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

/** Whatever a finger is meant to hit and is smaller than a thumb in a wet glove; a box is hit by its label. */
const smallTargets = (page: Page) =>
  page.evaluate(() => {
    const LEAST_PX = 56;
    return [
      ...document.querySelectorAll<HTMLElement>(
        ".bench :is(a[href], button, select, input, summary), .pad button",
      ),
    ]
      .map((target) =>
        target instanceof HTMLInputElement && ["checkbox", "radio"].includes(target.type)
          ? (target.closest("label") ?? target)
          : target,
      )
      .filter((target) => target.checkVisibility())
      .map((target) => ({ target, box: target.getBoundingClientRect() }))
      .filter(({ box }) => Math.min(box.width, box.height) < LEAST_PX - 0.5)
      .map(
        ({ target, box }) =>
          `${Math.round(box.width)} × ${Math.round(box.height)}: ${target.outerHTML.slice(0, 90)}`,
      );
  });

describe.each([
  { units: "inch", language: "en" },
  { units: "mm", language: "de" },
] as const)("in $language, $units", (reader) => {
  test("every kind of screen has targets for a wet glove and stays within 320", async () => {
    const page = await openBench("prep", {
      viewport: SMALL,
      clock: "2026-04-11T11:20:00",
      keeps: false,
      ...reader,
    });
    const faults: string[] = [];
    for (const [board, path] of SCREENS) {
      await goToScreen(page, board, path);
      const field = page.locator(".card input[data-pad]").first();
      if ((await field.count()) > 0) await field.focus();
      faults.push(...(await smallTargets(page)).map((small) => `${path}: ${small}`));
      const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      if (over > 0) faults.push(`${path}: ${over} px too wide`);
      const shown = await page.locator(".card .figures > div").count();
      // A list under the mixed cup may name more; what is acted on is three at most.
      if (shown > 3) faults.push(`${path}: ${shown} numbers`);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
