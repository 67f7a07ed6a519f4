import AxeBuilder from "@axe-core/playwright";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { formatQuantity, length, type Plan, planBuild } from "@lapline/engine";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { saved } from "../../../tests/browser/saved";
import { openSite, type Reader, type Site } from "./openSite";

let site: Site;
beforeAll(async () => {
  site = await openSite();
});
afterAll(() => site.close());

function planOfFile(text: string): Plan {
  const read = readBoardFile(text);
  if (!read.ok) throw new Error("the board cannot be read");
  return planBuild(read.board);
}

/** A board's page, once all its parts are there. */
async function openWhole(id: string, reader: Reader = {}): Promise<Page> {
  const page = await site.openBoard(id, { hasWorker: false, ...reader });
  await page.locator("#papers").waitFor();
  return page;
}

const outlineOf = (page: Page) => page.locator(".layer-outline path").first().getAttribute("d");

test("from the Shed to a board by keyboard alone; a reading typed changes the drawing and is kept", async () => {
  const page = await site.open("");
  const link = page.getByRole("link", { name: /5'10" quad/ });
  await link.waitFor();
  await page.locator(".standing svg").first().waitFor();
  await link.focus();
  await page.keyboard.press("Enter");
  const reading = page.getByLabel("station 5, left", { exact: true });
  await reading.waitFor();
  const before = await outlineOf(page);
  await reading.focus();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("9 13/16 in");
  await expect.poll(() => outlineOf(page)).not.toBe(before);
  await saved(page);
  const kept = await (await page.request.get(new URL("api/boards/five-ten-quad", site.address).href)).text();
  expect(JSON.parse(kept).survey.stations[4].left).toBe("9 13/16 in");
  const widest = formatQuantity(length(planOfFile(kept).shape?.widthMaxM ?? 0), "inch");
  const shown = page.locator("#measure .figures > div").nth(1).locator("dd .amount").first();
  await expect.poll(async () => (await shown.textContent())?.replace(/[\s\u2009]+/g, " ")).toBe(widest);
  await page.context().close();
});

test("a slip keeps the drawing, says at the field what is wrong, and is not saved", async () => {
  const page = await openWhole("six-four-tri");
  const before = await outlineOf(page);
  const reading = page.getByLabel("station 2, right", { exact: true });
  await reading.fill("12 3/0 in");
  await page.getByText(/^Not saved: not understood yet: .*station 2/).waitFor();
  expect(await reading.getAttribute("aria-invalid")).toBe("true");
  const note = await page.locator(`#${await reading.getAttribute("aria-describedby")}`).textContent();
  expect(note?.length).toBeGreaterThan(10);
  expect(await outlineOf(page)).toBe(before);
  await page.context().close();
});

test("a reading that does not fit is marked at its field and on the drawing", async () => {
  const page = await openWhole("nine-two-long");
  const plan = planOfFile(DEMO_BOARDS.find(({ id }) => id === "nine-two-long")?.text ?? "");
  const suspect = plan.shape?.readings.find((reading) => reading.suspect);
  const [, index, side] = /stations\[(\d+)\]\.(\w+)/.exec(suspect?.path ?? "") ?? [];
  const field = page.getByLabel(`station ${Number(index) + 1}, ${side}`, { exact: true });
  const note = page.locator(`#${await field.getAttribute("aria-describedby")}`);
  expect((await note.textContent())?.replace(/\s/g, " ")).toBe(
    `re-measure: ${formatQuantity(length(suspect?.wouldFitM ?? 0), "inch")} would fit`,
  );
  await expect.poll(() => page.locator(".layer-readings .hatch-tape").count()).toBe(1);
  await page.context().close();
});

test("inch and millimetre at once, everywhere on the page", async () => {
  const page = await openWhole("five-ten-quad");
  await page.getByRole("radio", { name: "mm", exact: true }).check();
  const units = () => page.locator("main .unit, main .drawing text").allTextContents();
  await expect.poll(async () => (await units()).some((unit) => /mm$/.test(unit))).toBe(true);
  await expect
    .poll(async () => (await units()).filter((unit) => /(?:^\s*|\d )(?:in|ft²|lb)\b|\d['"]/.test(unit)))
    .toEqual([]);
  await page.context().close();
});

test("what is typed in one part stands while somebody types on in another at once", async () => {
  const page = await openWhole("five-ten-quad", { keeps: false });
  const air = await page.locator("#mix").getByLabel("by day").elementHandle();
  const lap = await page.locator("#glass").getByLabel("lap", { exact: true }).first().elementHandle();
  // Everything that the first field shows until the keys have rested and the board was to be sent.
  const seen = await page.evaluate(
    async (fields) => {
      const [first, second] = fields.map((field) => field as HTMLInputElement);
      const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
      const type = (field: HTMLInputElement | undefined, text: string) => {
        field?.focus();
        setValue?.call(field, text);
        field?.dispatchEvent(new Event("input", { bubbles: true }));
      };
      const painted = () => new Promise((resolve) => requestAnimationFrame(resolve));
      const texts = new Set<string>();
      type(first, "22 C");
      await painted();
      type(second, "3 in");
      while (document.querySelector(".saving-on-device") === null) {
        await painted();
        texts.add(first?.value ?? "");
      }
      return [...texts];
    },
    [air, lap],
  );
  expect(seen).toEqual(["22 C"]);
  await page.context().close();
});

test("a station is added and taken away", async () => {
  const page = await openWhole("six-four-tri");
  const rows = page.locator(".survey tbody tr");
  const before = await rows.count();
  await page.getByLabel("Another station, from the tail").fill("450 mm");
  await page.keyboard.press("Enter");
  await expect.poll(() => rows.count()).toBe(before + 1);
  await page.getByRole("button", { name: `remove station ${before + 1}` }).click();
  await expect.poll(() => rows.count()).toBe(before);
  await page.context().close();
});

test("a board that is not there says so, and the way back", async () => {
  const page = await site.open("board/nowhere");
  await page.getByRole("heading", { name: "This board cannot be opened" }).waitFor();
  await page.getByRole("link", { name: "All boards" }).click();
  await page.getByRole("heading", { name: "The Shed" }).waitFor();
  await page.context().close();
});

const PHONE = { width: 360, height: 740 };
const TABLET = { width: 820, height: 1180 };
const DESK = { width: 1440, height: 900 };

/** The board with the most to say: a reading that does not fit, warnings, a gloss coat, one long box. */
test.each([
  { light: "paper", viewport: DESK },
  { light: "night", viewport: TABLET },
  { light: "sun", viewport: PHONE },
] as const)("a board's page is clear of faults for everyone, light: $light", async ({ light, viewport }) => {
  const page = await openWhole("nine-two-long", { viewport, light });
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await page.context().close();
});

describe.each([PHONE, TABLET, DESK])("at $width × $height", (viewport) => {
  test.each(DEMO_BOARDS)("$id stays within the screen, in inch and mm", async ({ id }) => {
    const page = await openWhole(id, { viewport });
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    for (const units of ["inch", "mm"]) {
      await page.getByRole("radio", { name: units, exact: true }).check();
      await expect.poll(over).toBeLessThanOrEqual(0);
    }
    await page.context().close();
  });
});
