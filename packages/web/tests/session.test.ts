import AxeBuilder from "@axe-core/playwright";
import type { BoardFile, RecordEntryFile } from "@lapline/contract";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { holdSqliteDisk, type SqliteDisk } from "../../store/tests/sqliteDisk";
import { openSite, type Site } from "./openSite";

let site: Site;
let disk: SqliteDisk;
beforeAll(async () => {
  disk = holdSqliteDisk();
  site = await openSite();
});
afterAll(async () => {
  await site.close();
  disk.letGo();
});

/** Other tests may run beside these. */
const PATIENT = { timeout: 60_000 };
const leftOf = (page: Page) => page.getByLabel("station 5, left", { exact: true });
const rightOf = (page: Page) => page.getByLabel("station 5, right", { exact: true });
const readingOf = (page: Page) => leftOf(page).inputValue();
const saved = (page: Page) => page.getByText("Saved.", { exact: true }).waitFor(PATIENT);

async function ask<T>(page: Page, path: string): Promise<T> {
  return (await page.request.get(new URL(`api/boards/${path}`, site.address).href)).json();
}

const stationOf = async (page: Page, id: string) => (await ask<BoardFile>(page, id)).survey.stations[4];

test("two people on one board see each other's changes, and neither loses the other's", async () => {
  const [one, other] = await Promise.all([site.openBoard("six-four-tri"), site.openBoard("six-four-tri")]);
  await Promise.all([leftOf(one).fill("247 mm"), rightOf(other).fill("249 mm")]);
  await expect.poll(() => leftOf(other).inputValue(), PATIENT).toBe("247 mm");
  await expect.poll(() => rightOf(one).inputValue(), PATIENT).toBe("249 mm");
  await one.getByText(/^Last changed by this machine, /).waitFor();
  expect(await stationOf(one, "six-four-tri")).toMatchObject({ left: "247 mm", right: "249 mm" });
  await Promise.all([one.context().close(), other.context().close()]);
});

/** One types without network, the other meanwhile the same field: when the first is back somebody has to choose. */
async function clashOn(id: string, here: string, there: string): Promise<Page> {
  const [page, other] = await Promise.all([site.openBoard(id), site.openBoard(id)]);
  await page.context().setOffline(true);
  await leftOf(page).fill(here);
  await page.getByText("Kept on this device, not yet on the shop's computer.").waitFor(PATIENT);
  await leftOf(other).fill(there);
  await saved(other);
  await other.context().close();
  await page.context().setOffline(false);
  await page.locator(".clash").waitFor(PATIENT);
  return page;
}

test("one field changed on two devices: both values with device and time, the chosen one is kept", async () => {
  const page = await clashOn("nine-two-long", "10 1/2 in", "10 3/4 in");
  const before = await stationOf(page, "nine-two-long");
  expect(before?.left).toBe("10 3/4 in");
  expect(await readingOf(page)).toBe("10 1/2 in");
  const choices = page.locator(".clash button");
  expect(await choices.first().textContent()).toMatch(/^10.*1.*2.*in.*typed here, /);
  expect(await choices.last().textContent()).toMatch(/^10.*3.*4.*in.*this machine, /);
  // The rest of the page is looked at where nobody has to choose.
  const { violations } = await new AxeBuilder({ page }).include(".clashes").analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
  await choices.first().click();
  await expect.poll(async () => (await stationOf(page, "nine-two-long"))?.left, PATIENT).toBe("10 1/2 in");
  await expect.poll(() => page.locator(".clash").count()).toBe(0);
  await page.context().close();

  const again = await clashOn("nine-two-long", "10 5/8 in", "10 7/8 in");
  await again.locator(".clash button").last().click();
  await saved(again);
  await expect.poll(() => readingOf(again)).toBe("10 7/8 in");
  expect((await stationOf(again, "nine-two-long"))?.left).toBe("10 7/8 in");
  await again.context().close();
});

test("typing is one step back, by button and by key; in a field the keys are the field's own", async () => {
  const page = await site.openBoard("five-ten-quad");
  const before = await readingOf(page);
  await leftOf(page).focus();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("9 3/4 in");
  await rightOf(page).fill("9 7/8 in");
  await page.locator("h1").click();
  await page.keyboard.press("ControlOrMeta+z");
  await page.keyboard.press("ControlOrMeta+z");
  await expect.poll(() => readingOf(page)).toBe(before);
  await page.keyboard.press("ControlOrMeta+Shift+z");
  await expect.poll(() => readingOf(page)).toBe("9 3/4 in");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect.poll(() => readingOf(page)).toBe(before);
  await page.getByRole("button", { name: "Redo" }).click();
  await expect.poll(() => readingOf(page)).toBe("9 3/4 in");
  await page.context().close();
});

test("a reload without network brings the board, what was typed, and the Shed; later it goes out", async () => {
  const page = await site.openBoard("five-ten-quad");
  await saved(page);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.context().setOffline(true);
  await leftOf(page).fill("9 5/8 in");
  await page.getByText("Kept on this device, not yet on the shop's computer.").waitFor(PATIENT);
  await page.reload();
  await expect.poll(() => readingOf(page), PATIENT).toBe("9 5/8 in");
  await page.getByText("Kept on this device, not yet on the shop's computer.").waitFor(PATIENT);
  await page.goto(site.address);
  await page.getByRole("link", { name: /5'10" quad/ }).waitFor(PATIENT);
  // From the Shed too: no page of that board is open.
  await page.reload();
  await page.context().setOffline(false);
  await expect.poll(async () => (await stationOf(page, "five-ten-quad"))?.left, PATIENT).toBe("9 5/8 in");
  await page.context().close();
});

const MANY = 300;

/** Puts weighings into the record by the page's own form, one after another. */
async function weigh(page: Page, from: number, to: number): Promise<void> {
  await page.evaluate(
    async ([first = 0, last = 0]) => {
      const form = document.querySelector<HTMLFormElement>("form.weigh-in");
      const field = form?.querySelector<HTMLInputElement>("input[type=text]");
      const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
      if (!form || !field) throw new Error("there is no form to weigh with");
      for (let grams = first; grams < last; grams += 1) {
        setValue?.call(field, `${grams} g`);
        field.dispatchEvent(new Event("input", { bubbles: true }));
        await new Promise((shown) => setTimeout(shown, 0));
        form.requestSubmit();
        await new Promise((shown) => setTimeout(shown, 0));
      }
    },
    [from, to],
  );
}

const FEW = 30;

/** The server goes when so many entries have been sent to it, before the next is let out. */
function stopAtEntry(page: Page, most: number): Promise<void> {
  let sent = 0;
  return new Promise((resolve, reject) => {
    void page.route("**/journal", async (route) => {
      sent += 1;
      if (sent === most) await site.app.stop().then(resolve, reject);
      await route.continue();
    });
  });
}

const weighedOf = (entries: readonly RecordEntryFile[]) =>
  entries.flatMap((entry) => (entry.kind === "weighed" ? [entry.mass] : []));

test("300 entries without the server, which comes, goes and comes back: all arrive once and in their order", async () => {
  const page = await site.openBoard("six-four-tri", { hasWorker: false });
  const journal = async () =>
    (await ask<{ entries: { entry: RecordEntryFile }[] }>(page, "six-four-tri/journal")).entries.map(
      ({ entry }) => entry,
    );
  await site.app.stop();
  const masses = Array.from({ length: MANY }, (_, i) => `${2000 + i} g`);
  await weigh(page, 2000, 2000 + MANY);
  await page.getByText(`Kept on this device, ${MANY} entries wait for the shop's computer.`).waitFor(PATIENT);
  const gone = stopAtEntry(page, FEW);
  await site.app.start();
  await gone;
  await page.getByText(/^Kept on this device, 2\d\d entries wait/).waitFor(PATIENT);
  await site.app.start();
  await expect.poll(async () => (await journal()).length, { timeout: 240_000 }).toBe(MANY);
  await saved(page);
  const entries = await journal();
  expect(weighedOf(entries)).toEqual(masses);
  expect(new Set(entries.map(({ id }) => id)).size).toBe(MANY);
  const { record = [] } = await ask<BoardFile>(page, "six-four-tri");
  expect(weighedOf(record).slice(-MANY)).toEqual(masses);
  expect(new Set(record.map(({ id }) => id)).size).toBe(record.length);
  await page.context().close();
}, 600_000);

test("every saved version is listed, two are told apart in words, and an old one is brought back", async () => {
  const page = await site.openBoard("nine-two-long");
  const before = await readingOf(page);
  await leftOf(page).fill("10 1/4 in");
  await expect.poll(async () => (await stationOf(page, "nine-two-long"))?.left, PATIENT).toBe("10 1/4 in");
  await page.getByText("Saved versions").click();
  const rows = page.locator(".versions > table").first().locator("tbody tr");
  await rows
    .nth(1)
    .getByRole("button", { name: /^compare/ })
    .click();
  const difference = page.locator("table.compared tbody tr");
  await expect.poll(() => difference.count()).toBe(1);
  await expect
    .poll(async () => (await difference.textContent())?.replace(/\s/g, " "))
    .toBe(`station 5, left${before}10 1/4 in`);
  const { violations } = await new AxeBuilder({ page }).include(".versions").analyze();
  expect(violations.map((each) => `${each.id}: ${each.nodes[0]?.html}`)).toEqual([]);
  await rows
    .nth(1)
    .getByRole("button", { name: /^bring back/ })
    .click();
  await expect.poll(() => readingOf(page)).toBe(before);
  await expect.poll(async () => (await stationOf(page, "nine-two-long"))?.left, PATIENT).toBe(before);
  await page.context().close();
});

// Each types a reading of its own, so that there is something to keep.
test.each<[string, keyof SqliteDisk, RegExp]>([
  ["9 1/8 in", "fill", /^Kept on this device.*The disk of the shop's computer is full/],
  ["9 2/8 in", "protect", /^Kept on this device.*can only be read just now/],
  ["9 3/8 in", "occupy", /^Kept on this device.*The shop's database cannot be reached/],
])(
  "what the shop's computer cannot keep is told, stays on this device, and goes out later: %s, %s",
  async (typed, make, words) => {
    const page = await site.openBoard("five-ten-quad");
    await saved(page);
    disk[make]();
    await leftOf(page).fill(typed);
    await page.locator(".saving").filter({ hasText: words }).waitFor(PATIENT);
    expect((await stationOf(page, "five-ten-quad"))?.left).not.toBe(typed);
    await page.reload();
    await page.locator(".saving").filter({ hasText: words }).waitFor(PATIENT);
    await expect.poll(() => readingOf(page)).toBe(typed);
    disk.free();
    await saved(page);
    expect((await stationOf(page, "five-ten-quad"))?.left).toBe(typed);
    await page.context().close();
  },
);

test("what this device may not do is told", async () => {
  const page = await site.openBoard("five-ten-quad", { hasWorker: false });
  await saved(page);
  const body = JSON.stringify({ title: "For keepers", detail: "A device at the bench may read and add." });
  await page.route("**/api/boards/five-ten-quad", (route) =>
    route.request().method() === "PUT"
      ? route.fulfill({ status: 403, body, contentType: "application/problem+json" })
      : route.fallback(),
  );
  await leftOf(page).fill("9 7/8 in");
  const words = /this device may not change that\. A device at the bench may read and add/;
  await page.locator(".saving").filter({ hasText: words }).waitFor(PATIENT);
  await page.unrouteAll();
  await page.reload();
  await saved(page);
  expect((await stationOf(page, "five-ten-quad"))?.left).toBe("9 7/8 in");
  await page.context().close();
});
