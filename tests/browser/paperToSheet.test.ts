import { DEMO_BOARDS } from "@lapline/contract";
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readPdf } from "../../packages/present/tests/paper/readPdf";
import { openSite, type Site } from "../../packages/web/tests/openSite";
import { buildFirst } from "../buildFirst";
import { saved } from "./saved";
import { tap } from "./tap";

let site: Site;
beforeAll(async () => {
  buildFirst("web", "cli");
  site = await openSite();
});
afterAll(() => site.close());

/** The north shed's tri, as it stands on a paper: tail to nose, in millimetres. */
const PAPER = DEMO_BOARDS.find(({ id }) => id === "six-four-tri")?.file.survey;
const READINGS = [
  ["left", "left"],
  ["right", "right"],
  ["thickness", "thick"],
  ["rocker", "rocker"],
] as const;

/** As it is read, with every kind of space made one and none before a unit. */
const flat = (text: string): string =>
  text
    .replace(/\s+/g, " ")
    .replace(/(\d) (?=(?:mm|g|mL|L|m)\b)/g, "$1")
    .trim();

async function pressReading(page: Page, name: string, reading: string): Promise<void> {
  const field = page.getByLabel(name, { exact: true });
  await tap(field);
  const pad = page.getByRole("region", { name: /^Reading pad/ });
  for (const key of reading.replace(" mm", ""))
    await tap(pad.getByRole("button", { name: key === "." ? "decimal point" : key, exact: true }));
  await tap(pad.getByRole("button", { name: "mm", exact: true }));
  await expect.poll(() => field.inputValue()).toBe(reading);
}

const figure = async (part: Locator, name: string): Promise<string> =>
  flat(
    (await part
      .locator(".figures > div", { hasText: name })
      .first()
      .locator("dd .amount")
      .first()
      .textContent()) ?? "",
  );

test("a paper of readings, the first by the pad and the rest in the table, becomes a Sheet with the figures of the page", async () => {
  if (PAPER === undefined) throw new Error("no paper");
  const page = await site.open("new", {
    viewport: { width: 360, height: 740 },
    isTouched: true,
    units: "mm",
  });
  await page.getByLabel("length", { exact: true }).fill("1930 mm");
  await page.getByLabel("arrangement").selectOption("tri");
  await page.getByLabel("foam", { exact: true }).selectOption("eps-20");
  await page.getByLabel("resin").selectOption("epoxy");
  await page.getByLabel("name").first().fill("from the paper");
  await tap(page.getByRole("button", { name: "Put it in the Shed" }));
  await page.getByRole("heading", { level: 1, name: "from the paper" }).waitFor();

  const [first, ...others] = PAPER.stations;
  for (const [field, name] of READINGS) await pressReading(page, `station 1, ${name}`, first?.[field] ?? "");
  await tap(page.getByRole("region", { name: /^Reading pad/ }).getByRole("button", { name: "table" }));
  // The paper's middle lies where the tape was held, not where it was suggested.
  await page.getByLabel("station 5, from tail", { exact: true }).fill("965 mm");
  for (const [i, station] of others.entries())
    for (const [field, name] of READINGS)
      await page.getByLabel(`station ${i + 2}, ${name}`, { exact: true }).fill(station[field] ?? "");
  const measure = page.locator("#measure");
  await measure.getByRole("img", { name: /plan view/ }).waitFor();

  const fins = page.locator("#fins");
  await fins.getByLabel("House set, to see on this board").selectOption("generic-tri");
  await tap(fins.getByRole("button", { name: "Put these numbers on the board" }).first());
  await page.getByLabel("air in the shop").selectOption("day-night");
  await page.getByLabel("by day").fill("21 C");
  await page.getByLabel("by night").fill("17 C");

  const papers = page.locator("#papers");
  await saved(page);
  await tap(papers.getByRole("button", { name: "Issue a Sheet (PDF)" }));
  const link = papers.getByRole("link", { name: "Sheet 1 (PDF)" });
  await link.waitFor();
  const sheet = await page.request.get(new URL((await link.getAttribute("href")) ?? "", site.address).href);
  const pages = await readPdf(new Uint8Array(await sheet.body()));
  const printed = flat(pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" "));

  expect(printed).toContain("from the paper");
  // Each part of the page follows the last plan in its turn.
  const unlike = async () =>
    (
      await Promise.all([
        ...["widest", "thickest", "volume"].map((name) => figure(measure, name)),
        figure(page.locator("#cut"), "buy"),
        figure(page.locator("#mix"), "resin"),
      ])
    ).filter((each) => !/^[\d.]+(?:mm|L|g|m)$/.test(each) || !printed.includes(each));
  await expect.poll(unlike).toEqual([]);
  // Each fin is marked by two distances from the tail and two from the line; the Sheet's drawing has them without the unit.
  const numbers = new Set(printed.split(/[^\d.]+/));
  const marks = await fins
    .locator("table.marks tr")
    .evaluateAll((rows) =>
      rows.flatMap((row) =>
        [...row.querySelectorAll("td")].slice(0, 2).map((cell) => cell.textContent ?? ""),
      ),
    );
  expect(marks).toHaveLength(3 * 2 * 2);
  expect(marks.filter((mark) => !numbers.has(String(Number.parseFloat(mark))))).toEqual([]);
  await page.context().close();
});
