import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { launchBrowser } from "../tests/browser/launchBrowser";
import { startApp } from "../tests/browser/startApp";
import { ROOT } from "../tests/sourceFiles";

const SIZES = {
  phone: { width: 360, height: 740 },
  tablet: { width: 820, height: 1180 },
  desk: { width: 1440, height: 900 },
};
const LIGHTS = ["light", "dark"] as const;
const PAGES = { shed: "", board: `board/${DEMO_BOARDS[0]?.id}` };

const folder = join(ROOT, "docs", "screenshots");
await mkdir(folder, { recursive: true });
const app = await startApp();
const browser = await launchBrowser();
try {
  for (const [size, viewport] of Object.entries(SIZES)) {
    for (const colorScheme of LIGHTS) {
      const context = await browser.newContext({ viewport, colorScheme, reducedMotion: "reduce" });
      const page = await context.newPage();
      for (const [name, path] of Object.entries(PAGES)) {
        await page.goto(new URL(path, app.address).href, { waitUntil: "networkidle" });
        await page.evaluate(() => document.fonts.ready);
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
