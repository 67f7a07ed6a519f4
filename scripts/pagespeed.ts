/**
 * How quick a board's page is on a processor four times slower: from each key typed to the picture that follows, and layout shift. The browser's own figures (Event Timing, Layout Instability); times hang on what else the machine
 * does, so its load is told beside them and nothing fails. `npm run pagespeed`.
 */
import { loadavg } from "node:os";
import type { Page } from "playwright-core";
import { launchBrowser } from "../tests/browser/launchBrowser";
import { startApp } from "../tests/browser/startApp";

const SLOWER = 4;
const BOARD = "six-four-tri";
/** Typed one key at a time into one reading, over and over: each is a plan, or a text that is not understood. */
const TYPED = "9 13/16 in";
const TIMES = 6;
const BETWEEN_KEYS_MS = 150;

interface Watched {
  keyMs: Record<number, number>;
  shift: number;
}

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
  await type(page);
  const { keyMs, shift } = await page.evaluate(() => (window as unknown as { watched: Watched }).watched);
  const times = Object.values(keyMs).sort((a, b) => a - b);
  const at = (share: number) => times[Math.min(times.length - 1, Math.floor(times.length * share))] ?? 0;
  console.log(`load of the machine ${loadavg()[0]?.toFixed(1)}; processor ${SLOWER} times slower`);
  console.log(`layout shift ${shift.toFixed(3)}`);
  console.log(`key to picture, ${times.length} keys: median ${at(0.5)} ms, p95 ${at(0.95)} ms`);
} finally {
  await browser.close();
  await app.close();
}

async function type(page: Page): Promise<void> {
  const reading = page.getByLabel("station 5, left", { exact: true });
  for (let i = 0; i < TIMES; i++) {
    await reading.fill("");
    await reading.focus();
    await page.keyboard.type(TYPED, { delay: BETWEEN_KEYS_MS });
  }
}

/** Runs in the page before anything else of it. */
function watch(): void {
  const watched: Watched = { keyMs: {}, shift: 0 };
  Object.assign(window, { watched });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { interactionId: number })[]) {
      if (entry.interactionId === 0 || !entry.name.startsWith("key")) continue;
      watched.keyMs[entry.interactionId] = Math.max(watched.keyMs[entry.interactionId] ?? 0, entry.duration);
    }
  }).observe({ type: "event", durationThreshold: 16, buffered: true } as PerformanceObserverInit);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
    })[])
      if (!entry.hadRecentInput) watched.shift += entry.value;
  }).observe({ type: "layout-shift", buffered: true });
}
