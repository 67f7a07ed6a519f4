import { type BoardFile, DEMO_BOARDS } from "@lapline/contract";
import { formatQuantity, mass } from "@lapline/engine";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { planOf } from "../../packages/web/src/plan/planOf";
import { openSite, type Site } from "../../packages/web/tests/openSite";
import { buildFirst } from "../buildFirst";
import { saved } from "./saved";

let site: Site;
beforeAll(async () => {
  buildFirst("web");
  site = await openSite();
});
afterAll(() => site.close());

const fileOf = (id: string): BoardFile => {
  const file = DEMO_BOARDS.find((each) => each.id === id)?.file;
  if (file === undefined) throw new Error(`no demo ${id}`);
  return structuredClone(file) as BoardFile;
};

async function keepBoard(id: string, file: object): Promise<void> {
  const kept = await fetch(new URL(`api/boards/${id}`, site.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(file),
  });
  if (!kept.ok) throw new Error(await kept.text());
}

const keptFile = async (page: Page, id: string): Promise<BoardFile> =>
  (await page.request.get(new URL(`api/boards/${id}`, site.address).href)).json();

const MM_PER_INCH = 25.4;
const EIGHTH_MM = MM_PER_INCH / 8;

/** `6 3/16 in` in millimetres. */
function inchesToMm(text: string): number {
  const [, whole = "0", over = "0", under = "1"] = /^(\d+)(?:\s+(\d+)\/(\d+))? in/.exec(text) ?? [];
  return (Number(whole) + Number(over) / Number(under)) * MM_PER_INCH;
}

test("an inch misread at one station is told there with what would fit, and is gone once it is read again", async () => {
  const page = await site.openBoard("five-ten-quad", { hasWorker: false });
  const field = page.getByLabel("station 7, left", { exact: true });
  const read = await field.inputValue();
  expect(read).toBe("6 3/16 in");
  await field.fill("5 3/16 in");
  const note = page.locator("#measure .field .tape", { hasText: "re-measure" });
  await note.waitFor();
  expect(await note.count()).toBe(1);
  expect(await field.getAttribute("aria-describedby")).toBe(await note.getAttribute("id"));
  const would = /re-measure: (.+ in) would fit/.exec((await note.textContent())?.replace(/\s+/g, " ") ?? "");
  expect(Math.abs(inchesToMm(would?.[1] ?? "") - inchesToMm(read))).toBeLessThan(EIGHTH_MM);
  await expect.poll(() => page.locator("#measure .layer-readings .hatch-tape").count()).toBe(1);

  await field.fill(read);
  await note.waitFor({ state: "detached" });
  await expect.poll(() => page.locator("#measure .layer-readings .hatch-tape").count()).toBe(0);
  await saved(page);
  expect((await keptFile(page, "five-ten-quad")).survey.stations[6]?.left).toBe(read);
  await page.context().close();
});

test("on a lopsided board averaged fins stand alike on both sides, and share what the rails differ", async () => {
  const page = await site.openBoard("six-four-tri", { units: "mm", keeps: false });
  const fins = page.locator("#fins");
  const marks = async (side: "left" | "right") => {
    const row = fins.locator("table.marks").getByRole("row", { name: `front ${side}, trailing` });
    const [tail = 0, line = 0, rail = 0] = (await row.getByRole("cell").allTextContents()).map(
      Number.parseFloat,
    );
    return { tail, line, rail };
  };
  await fins.getByRole("radio", { name: /^rail/ }).check();
  const stated = 29;
  await expect.poll(async () => Math.abs((await marks("left")).rail - stated)).toBeLessThanOrEqual(0.5);
  const byRail = { left: await marks("left"), right: await marks("right") };
  // A blank whose half-widths differ there: each fin at its own rail stands lopsided about the stringer.
  expect(byRail.left.line).not.toBe(byRail.right.line);

  await fins.getByRole("radio", { name: /^average/ }).check();
  await expect.poll(async () => (await marks("left")).line - (await marks("right")).line).toBe(0);
  const [left, right] = [await marks("left"), await marks("right")];
  expect(left.tail).toBe(right.tail);
  // To average is to take the mean of the two: what one rail has more the other has less. Each is rounded to half a millimetre.
  expect(Math.abs(left.line - (byRail.left.line + byRail.right.line) / 2)).toBeLessThanOrEqual(0.5);
  expect(Math.abs((left.rail + right.rail) / 2 - stated)).toBeLessThanOrEqual(0.5);
  await page.context().close();
});

/** What the plan of a kept file has for the first cup of the bottom's laminate, as the scale shows it. */
function cupOf(file: BoardFile): string {
  const read = planOf(JSON.stringify(file));
  const coat = read.ok ? read.plan.mix?.coats.find(({ id }) => id === "laminate-bottom") : undefined;
  return formatQuantity(mass(coat?.cups[0]?.baseMassKg ?? 0), "mm").replace(/\s/, " ");
}

test("in a cold shop the dose is refused with its reason; warmed, it is given, and the Bench mixes by it", async () => {
  const { record: _, ...file } = fileOf("five-ten-quad");
  await keepBoard("cold-shop", { ...file, name: "cold shop" });
  const page = await site.openBoard("cold-shop", { hasWorker: false });
  const mix = page.locator("#mix");
  const warm = async (celsius: string) => {
    for (const name of ["by day", "by night", "resin is at"]) await mix.getByLabel(name).fill(celsius);
  };
  await warm("9 C");
  const why = mix.locator(".cups .tape-blocker");
  // Each of the three may have a plan of its own, and the part follows them in its turn.
  await saved(page);
  await expect.poll(() => mix.locator(".cups .figures").count()).toBe(0);
  const stops = page.getByRole("region", { name: "What stops the build" });
  await expect
    .poll(async () => stops.getByText((await why.first().textContent()) ?? "", { exact: true }).count())
    .toBeGreaterThan(0);
  expect(await why.first().textContent()).toMatch(/°C/);
  await page.goto(new URL("board/cold-shop/bench/laminate-bottom#cup-1", site.address).href);
  await page.locator(".bench h1").waitFor();
  expect(await page.getByRole("button", { name: "Hardener is in" }).count()).toBe(0);
  await page.getByRole("link", { name: "board" }).click();

  await warm("20 C");
  await why.first().waitFor({ state: "detached" });
  await saved(page);
  const given = cupOf(await keptFile(page, "cold-shop"));
  expect(given).toMatch(/^\d+ g$/);
  const resin = mix
    .locator(".cups .figures > div", { hasText: "resin" })
    .first()
    .locator("dd .amount")
    .first();
  await expect.poll(async () => (await resin.textContent())?.replace(/\s/, " ")).toBe(given);
  await page.goto(new URL("board/cold-shop/bench/laminate-bottom#cup-1", site.address).href);
  const poured = page.getByLabel("resin, as poured");
  await expect.poll(async () => (await poured.inputValue()).replace(/\s/, " ")).toBe(given);
  await page.getByRole("button", { name: "Hardener is in" }).click();
  await page.getByRole("heading", { name: "Wet clock" }).waitFor();
  await page.context().close();
});

/** A board of which every step was done, a day each. */
function doneBoard(): BoardFile {
  const { record: _, ...file } = fileOf("five-ten-quad");
  const read = planOf(JSON.stringify(file));
  if (!read.ok) throw new Error("the demo can be read");
  const begun = Date.parse("2026-04-11T10:00Z");
  const record = (read.plan.steps ?? []).map(({ id }, i) => ({
    id: `d${i}`,
    kind: "done" as const,
    step: id,
    at: new Date(begun + i * 24 * 3_600_000).toISOString().slice(0, 16),
  }));
  return { ...file, name: "done board", record };
}

test("a finished board that is sanded through is not for water until every step of its repair is done", async () => {
  await keepBoard("done-board", doneBoard());
  const page = await site.openBoard("done-board", { hasWorker: false, clock: "2026-06-01T09:00:00" });
  const barred = page.locator(".barred");
  const water = page.locator("#water");
  await water.locator(".steps").waitFor();
  expect(await barred.count()).toBe(0);

  const through = page.getByRole("form", { name: "Sanded through" });
  await through.getByLabel("From the tail").fill("600 mm");
  await through.getByLabel("From the centreline").fill("180 mm");
  await through.getByLabel("Size across").fill("30 mm");
  await through.getByRole("button", { name: "Write it down" }).click();
  await barred.getByText("foam shows on the left of the deck").waitFor();
  const open = water.locator(".steps > li:not(.done)");
  await expect.poll(() => open.count()).toBeGreaterThan(2);
  const steps = await open.count();
  // On the Bench too, and in the Shed.
  await page.locator("#seal .open li.bars").first().waitFor();
  expect(await barred.count()).toBe(1);

  for (let left = steps; left > 0; left -= 1) {
    const step = page.locator(`#${await open.first().getAttribute("id")}`);
    await step.getByRole("button", { name: "Mark done" }).click();
    await step.getByLabel("Hands off at").fill(`2026-06-${String(20 - left).padStart(2, "0")}T10:00`);
    await step.getByRole("button", { name: "Write it down" }).click();
    await expect.poll(() => open.count()).toBe(left - 1);
    // Closed is closed: the last steps of the order may only be waits.
    if ((await barred.count()) === 0) break;
  }
  await barred.waitFor({ state: "detached" });
  await saved(page);
  await page.goto(new URL("board/done-board", site.address).href);
  await page.locator("#seal .repair.done").waitFor();
  expect(await barred.count()).toBe(0);
  await page.context().close();
});
