import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS } from "@lapline/contract";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

/** What the page complained of, from its first moment on. */
function watch(page: Page): string[] {
  const complaints: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("requestfailed", (request) => complaints.push(`${request.url()} failed`));
  return complaints;
}

const SIZES = [
  { width: 360, height: 740 },
  { width: 820, height: 1180 },
  { width: 1440, height: 900 },
];

describe.each(SIZES)("at $width × $height", (viewport) => {
  test("the first page lists the demo boards, without complaint, for everyone", async () => {
    const context = await running.browser.newContext({ viewport, serviceWorkers: "allow" });
    const page = await context.newPage();
    const complaints = watch(page);
    await page.goto(running.app.address);
    for (const { text } of DEMO_BOARDS) {
      await page.locator(".standing-name", { hasText: JSON.parse(text).name }).waitFor();
    }
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual(
      [],
    );
    expect(complaints).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await context.close();
  });
});
