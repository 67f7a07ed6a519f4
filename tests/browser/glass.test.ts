import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { runForTests } from "./runForTests";

const running = runForTests();

const BOARD = `board/${DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.id}`;

test("the lay-up is chosen on the page: the cloth follows at once, and what cannot be is said at its field", async () => {
  const context = await running.browser.newContext({
    viewport: { width: 820, height: 1180 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  await page.goto(new URL(BOARD, running.app.address).href);
  const glass = page.locator("#glass");
  const pieces = glass.getByRole("table", { name: "Cloth" }).getByRole("rowheader");
  const bottom = glass.getByRole("group", { name: "Bottom's cloth" });
  await expect
    .poll(() => pieces.allTextContents())
    .toEqual(["bottom 1 e-136", "deck 1 e-136", "deck 2 e-136", "patch 1 e-136"]);

  await bottom.getByRole("button", { name: "add a layer" }).click();
  await bottom.getByLabel("layer 2").selectOption("s-136");
  await expect.poll(() => pieces.allTextContents()).toContain("bottom 2 s-136");

  await bottom.getByLabel("lap", { exact: true }).fill("20 in");
  await bottom.getByText("is the unit right?").waitFor();
  await bottom.getByLabel("lap", { exact: true }).fill("2 in");

  await glass.getByText("Rolls and prices").click();
  const roll = glass.getByRole("group", { name: "4 oz plain E-glass", exact: true });
  await roll.getByLabel("price of a metre").fill("-3");
  await roll.getByText("price is a number").waitFor();
  await roll.getByLabel("price of a metre").fill("9,5");
  await expect.poll(() => glass.locator(".field-problem").count()).toBe(0);

  await glass.getByText("Materials of your own").click();
  await glass.getByLabel("a resin of your own, by a short name").fill("Shed Poly");
  await glass.getByRole("button", { name: "add it" }).first().click();
  const resin = glass.getByRole("group", { name: "shed-poly" });
  const problems = () => resin.locator(".field-problem").count();
  await expect.poll(problems).toBe(5);
  const fields = ["least dose (%)", "most dose (%)", "at (20 C)", "dose (%)", "gels in (25 min)"];
  for (const [i, text] of ["1 %", "2 %", "20 C", "1 %", "48 min"].entries()) {
    await resin.getByLabel(fields[i]!, { exact: true }).fill(text);
  }
  await expect.poll(problems).toBe(0);
  await resin.getByLabel("kind of resin").selectOption("sunlight");
  await resin.getByLabel("UV index").fill("6");
  await expect.poll(problems).toBe(1);
  await resin.getByLabel("UV index").fill("");
  await expect.poll(problems).toBe(0);

  const { violations } = await new AxeBuilder({ page }).include("#glass").analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await context.close();
}, 300_000);
