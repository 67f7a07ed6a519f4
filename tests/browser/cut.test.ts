import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS } from "@lapline/contract";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

const BOARD = `board/${DEMO_BOARDS.find(({ id }) => id === "six-four-tri")?.id}`;

describe("the Cut part", () => {
  test.each([
    { width: 360, height: 740 },
    { width: 1440, height: 900 },
  ])(
    "$width wide: cuts in order, and a search that only the button begins, in a worker",
    async (viewport) => {
      const context = await running.browser.newContext({ viewport, reducedMotion: "reduce" });
      const page = await context.newPage();
      await page.goto(new URL(BOARD, running.app.address).href);
      const cut = page.locator("#cut");
      await expect.poll(() => cut.locator(".cut-list li").count()).toBe(4);
      // The plan has a thread of its own.
      await expect.poll(() => page.workers().length).toBe(1);

      const began = page.waitForEvent("worker");
      await cut.getByRole("button", { name: "Look for the shortest roll of e-203" }).click();
      await began;
      await cut.getByText("no lay can be shorter than").waitFor();
      await cut.getByRole("img", { name: "Shortest lay of e-203" }).waitFor();
      await expect.poll(() => page.workers().length).toBe(1);

      const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(sideways).toBeLessThanOrEqual(0);
      const { violations } = await new AxeBuilder({ page }).include("#cut").analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      await context.close();
    },
  );
});
