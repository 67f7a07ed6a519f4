import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import type { Page } from "playwright-core";
import { launchBrowser } from "../tests/browser/launchBrowser";
import { startApp } from "../tests/browser/startApp";
import { ROOT } from "../tests/sourceFiles";

const SIZES = {
  phone: { width: 360, height: 740 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1440, height: 900 },
};
const LIGHTS = ["light", "dark"] as const;
const BOARD = `board/${DEMO_BOARDS[0]?.id}`;
const PAGES: ReadonlyArray<{ readonly name: string; readonly path: string; readonly at?: string }> = [
  { name: "shed", path: "" },
  { name: "board", path: BOARD },
  { name: "fins", path: BOARD, at: "#fins" },
  { name: "gate", path: BOARD, at: ".gate" },
  { name: "as-set", path: BOARD, at: "#as-set" },
];

/** A fin measured with its front end 3 mm too far out, as somebody would type it. */
async function typeAsSet(page: Page): Promise<void> {
  const entry = page.getByRole("group", { name: "Both marks, front left" });
  await entry.getByLabel("trailing, from tail").fill("11 1/2 in");
  await entry.getByLabel("trailing, from line").fill("6 in");
  await entry.getByLabel("leading, from tail").fill("15 7/8 in");
  await entry.getByLabel("leading, from line").fill("5 27/32 in");
}

const folder = join(ROOT, "docs", "screenshots");
await mkdir(folder, { recursive: true });
const app = await startApp();
const browser = await launchBrowser();
try {
  for (const [size, viewport] of Object.entries(SIZES)) {
    for (const colorScheme of LIGHTS) {
      const context = await browser.newContext({ viewport, colorScheme, reducedMotion: "reduce" });
      const page = await context.newPage();
      // What is typed for a picture is not kept for the next one.
      await page.route("**/api/boards/*", (route) =>
        route.request().method() === "PUT" ? route.abort() : route.continue(),
      );
      for (const { name, path, at } of PAGES) {
        await page.goto(new URL(path, app.address).href, { waitUntil: "networkidle" });
        await page.evaluate(() => document.fonts.ready);
        if (at === "#as-set") await typeAsSet(page);
        if (at !== undefined)
          await page.locator(at).evaluate((place) => place.scrollIntoView({ behavior: "instant" }));
        const file = join(folder, `${name}-${size}-${colorScheme}.png`);
        await page.screenshot({ path: file, fullPage: process.argv.includes("--whole") });
        console.log(file);
      }
      await context.close();
    }
  }
} finally {
  await browser.close();
  await app.close();
}
