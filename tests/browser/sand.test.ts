import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS } from "@lapline/contract";
import type { Locator, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

const BOARD = `board/${DEMO_BOARDS[0]?.id}`;

async function openBoard(width: number): Promise<Page> {
  const context = await running.browser.newContext({
    viewport: { width, height: 900 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  await page.goto(new URL(BOARD, running.app.address).href);
  await page.locator("#seal").waitFor();
  return page;
}

const writeDown = (form: Locator) => form.getByRole("button", { name: "Write it down" }).click();

describe("from the sander to the water, on the page", () => {
  test("film and dust are written down, a film below nought is refused, and the budget goes by them", async () => {
    const page = await openBoard(1440);
    const film = page.getByRole("form", { name: "Film gauged" });
    await film.getByLabel("Zone").selectOption("rail-left");
    await film.getByLabel("The gauge reads").fill("-5 µm");
    await writeDown(film);
    await film.getByText("a film is nought or more").waitFor();
    await film.getByLabel("The gauge reads").fill("131 µm");
    await writeDown(film);
    const row = page.locator("#sand tr", { hasText: "left rail" });
    await row.getByText("131", { exact: true }).waitFor();
    const taken = () =>
      page
        .locator("#sand tr", { hasText: /^bottom/ })
        .locator("td")
        .nth(1)
        .textContent();
    const before = await taken();
    const dust = page.getByRole("form", { name: "Dust weighed" });
    await dust.getByLabel("After the paper").selectOption("P180");
    await dust.getByLabel("All its dust so far weighs").fill("95 g");
    await writeDown(dust);
    await expect.poll(taken).not.toBe(before);
    await page.context().close();
  });

  test("a sand-through bars the board, is drawn, leads to its step, and is struck when it was a slip", async () => {
    const page = await openBoard(820);
    const seal = page.locator("#seal");
    const barred = page.locator(".barred");
    await barred.getByText("Not for water:").waitFor();
    const through = page.getByRole("form", { name: "Sanded through" });
    await through.getByLabel("From the tail").fill("600 mm");
    await through.getByLabel("From the centreline").fill("180 mm");
    await through.getByLabel("Size across").fill("30 mm");
    await writeDown(through);
    await barred.getByText("foam shows on the left of the deck").waitFor();
    await seal.getByRole("heading", { name: /^Repair 1: foam on the left of the deck/ }).waitFor();
    await seal.getByRole("img", { name: /, repairs/ }).waitFor();
    await seal.getByRole("link", { name: "To the step" }).first().click();
    await expect.poll(() => new URL(page.url()).hash).toBe("#step-repair-1-dry");
    await page.locator("#step-repair-1-dry").waitFor();
    const water = page.locator("#water");
    await water.getByRole("heading", { name: "Record", exact: true }).click();
    await water.getByRole("button", { name: /^foam shows.*it was a slip$/ }).click();
    await seal.getByRole("heading", { name: /^Repair 1/ }).waitFor({ state: "detached" });
    await water.locator("s", { hasText: "foam shows" }).waitFor();
    await page.context().close();
  });

  test("a step is marked with its time, and marked anew by a later entry", async () => {
    const page = await openBoard(360);
    const step = page.locator("#step-laps-bottom");
    await step.getByRole("button", { name: "Mark done" }).click();
    await step.getByLabel("Hands off at").fill("2026-04-11T14:10");
    await writeDown(step);
    await step.getByText("Done: Sat 11 Apr 2026, 14:10.").waitFor();
    await step.getByRole("button", { name: "Change the mark" }).click();
    await step.getByLabel("Hands off at").fill("2026-04-11T14:25");
    await writeDown(step);
    await step.getByText("Done: Sat 11 Apr 2026, 14:25.").waitFor();
    const water = page.locator("#water");
    await water.getByRole("heading", { name: "Record", exact: true }).click();
    await water.locator("s", { hasText: "Done: Level the bottom's laps" }).waitFor();
    const wider = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect(wider).toBe(false);
    await page.context().close();
  });

  test("is for everyone: labels, names and contrast of Sand and Seal", async () => {
    const page = await openBoard(1440);
    const audit = await new AxeBuilder({ page }).include("#sand").include("#seal").analyze();
    expect(audit.violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    await page.context().close();
  });
});
