import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS, type StationFile } from "@lapline/contract";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { runForTests } from "./runForTests";
import { saved } from "./saved";

const running = runForTests();

/** The north shed's quad as a paper of readings. */
const PAPER = DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.file.survey;
const READINGS = [
  ["left", "left"],
  ["right", "right"],
  ["thickness", "thick"],
  ["rocker", "rocker"],
] as const;

async function openPage(
  path: string,
  width: number,
  light: "paper" | "night" | "sun" = "paper",
): Promise<Page> {
  const context = await running.browser.newContext({
    viewport: { width, height: 900 },
    reducedMotion: "reduce",
  });
  const page = await context.newPage();
  await page.addInitScript((chosen) => localStorage.setItem("lapline.light", chosen), light);
  await page.goto(new URL(path, running.app.address).href);
  return page;
}

async function audit(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

/** A place may be written in feet or in inches. */
const withoutPlaces = (stations: readonly StationFile[]) =>
  stations.map(({ fromTail: _tail, fromNose: _nose, ...readings }) => readings);

const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

test("a paper of readings becomes a board, a plan and a Sheet", async () => {
  if (PAPER === undefined) throw new Error("no paper");
  const page = await openPage("new", 1440);
  await page.getByLabel("length").fill("5'10\"");
  await page.getByText("9 places to hold the tape are suggested").waitFor();
  await page.getByLabel("arrangement").selectOption("quad");
  await page.getByRole("button", { name: "Put it in the Shed" }).click();
  await page.getByRole("heading", { level: 1, name: "5'10\" quad" }).waitFor();
  await page.getByText("To be measured: 0 of 9 stations read.").waitFor();

  const measure = page.locator("#measure");
  await measure.getByLabel("tail", { exact: true }).selectOption("squash");
  await measure.getByLabel("tail width").fill("5 in");
  for (const [i, station] of PAPER.stations.entries()) {
    for (const [field, name] of READINGS)
      await measure.getByLabel(`station ${i + 1}, ${name}`, { exact: true }).fill(station[field] ?? "");
  }
  await measure.getByRole("img", { name: /plan view/ }).waitFor();
  await expect.poll(() => measure.getByText("To be measured").count()).toBe(0);
  await saved(page);
  const kept = await (await page.request.get(page.url().replace("/board/", "/api/boards/"))).json();
  expect(kept.survey).toMatchObject({ length: PAPER.length, tail: PAPER.tail });
  expect(withoutPlaces(kept.survey.stations)).toEqual(withoutPlaces(PAPER.stations));

  const fins = page.locator("#fins");
  await fins.getByLabel("House set, to see on this board").selectOption("generic-quad");
  await fins.getByRole("button", { name: "Put these numbers on the board" }).first().click();
  await fins
    .getByRole("img", { name: /marking-out/i })
    .first()
    .waitFor();

  const papers = page.locator("#papers");
  await saved(page);
  await papers.getByRole("button", { name: "Issue a Sheet (PDF)" }).click();
  const link = papers.getByRole("link", { name: "Sheet 1 (PDF)" });
  await link.waitFor();
  const answer = await page.request.get(
    new URL((await link.getAttribute("href")) ?? "", running.app.address).href,
  );
  expect(answer.headers()["content-type"]).toBe("application/pdf");
  expect((await answer.body()).subarray(0, 5).toString()).toBe("%PDF-");
  await page.context().close();
});

test("polyester on expanded polystyrene is refused before there is a board", async () => {
  const page = await openPage("new", 360);
  await page.getByLabel("length").fill("6 ft");
  await page.getByLabel("foam", { exact: true }).selectOption("eps-20");
  await page.getByText("dissolves expanded polystyrene").waitFor();
  const go = page.getByRole("button", { name: "Put it in the Shed" });
  await expect.poll(() => go.getAttribute("aria-disabled")).toBe("true");
  await go.click({ force: true });
  expect(new URL(page.url()).pathname).toBe("/new");
  await page.getByLabel("resin").selectOption("epoxy");
  await expect.poll(() => go.getAttribute("aria-disabled")).toBe("false");
  await page.context().close();
});

describe("a file dropped in", () => {
  /** As a hand drops it from the desk. */
  async function drop(page: Page, name: string, text: string): Promise<void> {
    const data = await page.evaluateHandle(
      ([fileName, content]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([content ?? ""], fileName ?? ""));
        return transfer;
      },
      [name, text],
    );
    await page.locator(".drop").dispatchEvent("drop", { dataTransfer: data });
  }

  test("is put in the Shed where it is good, and told field by field where it is not", async () => {
    const page = await openPage("new", 820);
    const good = DEMO_BOARDS[1]?.text ?? "";
    await drop(page, "broken.json", good.replace('"fromTail": "300 mm"', '"fromTail": "300 mmm"'));
    await page.getByText("broken.json cannot be read yet: one thing is to be put right.").waitFor();
    await page.getByText("survey.stations[2].fromTail").waitFor();
    expect(await audit(page)).toEqual([]);
    await drop(page, "good.json", good.replace('"name": "', '"name": "dropped '));
    await page.getByRole("heading", { level: 1, name: /^dropped/ }).waitFor();
    await page.context().close();
  });

  test("brings its readings where it is a table", async () => {
    const page = await openPage("new", 820);
    const table =
      "from tail (in),left half-width (in),right half-width (in),board length (in)\n12,7,7.1,72\n36,9.5,9.5,\n";
    await drop(page, "paper.csv", table);
    await page.getByText("2 stations with their readings come from the table.").waitFor();
    await page.getByRole("button", { name: "Put it in the Shed" }).click();
    await page.getByText("To be measured: 2 of 2 stations read.").waitFor();
    await page.context().close();
  });
});

describe("the Shed", () => {
  test("finds boards by name and rider, puts one away and brings it back", async () => {
    const file = { ...DEMO_BOARDS[0]?.file, name: "one for the point", order: { rider: "rider P" } };
    const headers = { "content-type": "application/json" };
    for (const name of ["one for the point", "another"]) {
      const body = JSON.stringify({ ...file, name });
      await fetch(new URL("api/boards", running.app.address), { method: "POST", headers, body });
    }
    const page = await openPage("", 820);
    const search = page.getByLabel("Search by name or rider");
    await search.fill("RIDER p point");
    const names = page.locator(".standing-name");
    await expect.poll(() => names.allTextContents()).toEqual(["one for the point"]);
    await page.getByRole("link", { name: /one for the point/ }).click();
    await page.getByRole("button", { name: "Put this board away" }).click();
    await page.getByRole("button", { name: "Put it away" }).click();
    await page.getByRole("heading", { level: 1, name: "The Shed" }).waitFor();
    await page.getByRole("heading", { name: "Put away" }).click();
    await page.getByRole("button", { name: "Bring one for the point back" }).click();
    await page.getByText("No board is put away.").waitFor();
    await page.getByRole("link", { name: /one for the point/ }).waitFor();
    await page.context().close();
  });

  test.each(["paper", "night", "sun"] as const)("and a new board keep to the rules in %s", async (light) => {
    for (const [path, ready] of [
      ["", ".silhouette"],
      ["new", ".questions"],
    ] as const) {
      const page = await openPage(path, 320, light);
      await page.locator(ready).first().waitFor();
      expect(await audit(page)).toEqual([]);
      expect(await sideways(page)).toBeLessThanOrEqual(0);
      await page.context().close();
    }
  });
});

test("a board that is only begun opens with all its parts, leads to the readings, and can be named, warmed and shaped", async () => {
  const survey = { length: "6 ft", nose: { kind: "pointed" }, tail: { kind: "round" }, stations: [] };
  await fetch(new URL("api/boards/bare", running.app.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ format: "lapline-board/1", name: "bare", survey }),
  });
  const page = await openPage("board/bare", 320);
  await page.getByText("To be measured: 0 of 0 stations read.").waitFor();
  await page.locator("section.part").nth(7).waitFor();
  await page.getByText("Name and rider").click();
  await page.getByLabel("rider", { exact: true }).fill("rider B");
  const mix = page.locator("#mix");
  await mix.getByLabel("air in the shop").selectOption("day-night");
  await mix.getByLabel("by day").fill("14 C");
  await mix.getByLabel("by night").fill("8");
  await mix.locator(".field-problem").first().waitFor();
  await mix.getByLabel("by night").fill("8 C");
  await page.getByText("Section, twist, how the tape reads").click();
  await page.getByRole("button", { name: "say the section" }).click();
  await page.getByRole("button", { name: "say the bottom" }).click();
  await page.getByLabel("bottom", { exact: true }).selectOption("vee");
  await page.getByLabel("depth", { exact: true }).fill("1/8 in");
  await saved(page);
  const kept = await (await page.request.get(new URL("api/boards/bare", running.app.address).href)).json();
  expect(kept).toMatchObject({
    order: { rider: "rider B" },
    shop: { temperature: { day: "14 C", night: "8 C" } },
    survey: { section: { apex: 0.4, bottom: { kind: "vee", depth: "1/8 in" } } },
  });
  expect(await audit(page)).toEqual([]);
  expect(await sideways(page)).toBeLessThanOrEqual(0);
  await page.context().close();
});
