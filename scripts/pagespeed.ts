/**
 * How quick a board's page is on a processor four times slower: from each key to the next picture, from each key to the picture with the new
 * plan, layout shift, and from opening the solid to its first picture. The browser's own figures (Event Timing, Layout Instability); times hang on what
 * else the machine does, so its load is told beside them and nothing fails. The browser slows only the page's own thread: what planning
 * would take longer in its thread is told as well. `npm run pagespeed`.
 */
import { loadavg } from "node:os";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import type { Locator, Page } from "playwright-core";
import { answerAsked } from "../packages/web/src/plan/answerPlan";
import { launchBrowser } from "../tests/browser/launchBrowser";
import { startApp } from "../tests/browser/startApp";
import { type Watched, watch } from "./watchPage";

const SLOWER = 4;
const BOARD = "six-four-tri";
/** Typed one key at a time into one reading, over and over: each is a plan, or a text that is not understood. */
const TYPED = "9 13/16 in";
const TIMES = 6;
const BETWEEN_KEYS_MS = 150;
/** Its last digit typed over: near enough to the other readings to be believed, so that each key moves the outline. */
const READ = "242.";
const DIGITS = "1357924680";
const REST_MS = 1500;

const app = await startApp();
const browser = await launchBrowser();
try {
  const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
  const client = await page.context().newCDPSession(page);
  await client.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await page.addInitScript(watch);
  await page.goto(`${app.address}board/${BOARD}`);
  await page.locator("#measure svg").first().waitFor();
  await page.locator("#water").waitFor();
  await page.waitForTimeout(REST_MS);
  await type(page);
  await typeDigits(page);
  const { keyMs, planMs, shift } = await read(page);
  console.log(`load of the machine ${loadavg()[0]?.toFixed(1)}; processor ${SLOWER} times slower`);
  console.log(`layout shift ${shift.toFixed(3)}`);
  console.log(`key to picture, ${spread(Object.values(keyMs))}`);
  console.log(`key to the picture of its plan, ${spread(planMs)}`);
  console.log(
    `  its thread is not slowed; slowed alike it would take ${((SLOWER - 1) * planTakesMs()).toFixed(0)} ms longer`,
  );
  console.log(`solid, from its opening to its first picture: ${(await openSolid(page)).toFixed(0)} ms`);
} finally {
  await browser.close();
  await app.close();
}

function fieldOf(page: Page): Locator {
  return page.getByLabel("station 5, left", { exact: true });
}

function read(page: Page): Promise<Watched> {
  return page.evaluate(() => (window as unknown as { watched: Watched }).watched);
}

async function type(page: Page): Promise<void> {
  for (let i = 0; i < TIMES; i++) {
    await fieldOf(page).fill("");
    await fieldOf(page).focus();
    await page.keyboard.type(TYPED, { delay: BETWEEN_KEYS_MS });
  }
}

async function typeDigits(page: Page): Promise<void> {
  await fieldOf(page).fill(`${READ}0 mm`);
  await page.waitForTimeout(REST_MS);
  const field = await fieldOf(page).elementHandle();
  for (const digit of DIGITS) {
    await field?.evaluate(
      (input, at) => (input as HTMLInputElement).setSelectionRange(at, at + 1),
      READ.length,
    );
    const before = (await read(page)).planMs.length;
    await page.keyboard.press(digit);
    await page.waitForFunction(
      (known) => (window as unknown as { watched: Watched }).watched.planMs.length > known,
      before,
    );
    await page.waitForTimeout(REST_MS);
  }
}

/** Of what a key asks of the planning thread, on this machine as it is. */
function planTakesMs(): number {
  const board = readBoardFile(DEMO_BOARDS.find(({ id }) => id === BOARD)?.text ?? "");
  if (!board.ok) return Number.NaN;
  const { file } = board;
  const times = Array.from({ length: 2 * DIGITS.length }, () => {
    const from = performance.now();
    answerAsked({ file, known: file });
    return performance.now() - from;
  });
  return quantile(times, 0.5);
}

async function openSolid(page: Page): Promise<number> {
  const button = page.locator("#measure .solid-fold button").first();
  await button.scrollIntoViewIfNeeded();
  await page.waitForTimeout(REST_MS);
  await button.click();
  await page.locator("#measure canvas[data-drawn]").waitFor();
  await page.waitForTimeout(REST_MS);
  return (await read(page)).solidMs ?? Number.NaN;
}

function spread(times: readonly number[]): string {
  return `${times.length} keys: median ${quantile(times, 0.5).toFixed(0)} ms, p95 ${quantile(times, 0.95).toFixed(0)} ms`;
}

function quantile(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;
}
