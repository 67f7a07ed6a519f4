import AxeBuilder from "@axe-core/playwright";
import { type BoardFile, DEMO_BOARDS } from "@lapline/contract";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openSite, type Site } from "../../packages/web/tests/openSite";
import { buildFirst } from "../buildFirst";

let site: Site;
beforeAll(async () => {
  buildFirst("web");
  site = await openSite();
  await keepStoppedBoard();
  await keepSandedThrough();
});
afterAll(() => site.close());

/** A shop too cold for the resin, and a fin that is set off the board: stopped in two of its parts. */
async function keepStoppedBoard(): Promise<void> {
  const file = structuredClone(DEMO_BOARDS.find(({ id }) => id === "nine-two-long")?.file) as BoardFile;
  const shop = { ...file.shop, temperature: { day: "6 C", night: "4 C" }, resinTemperature: "6 C" };
  if (file.fins === undefined) throw new Error("the demo has fins");
  const set = file.fins.set.map((fin) => (fin.fin === "front" ? { ...fin, fromRail: "20 in" } : fin));
  await keep("stopped", { ...file, shop, fins: { ...file.fins, set } });
}

/** Sanded to the foam on the deck and to the weave on the bottom: two repairs are open. */
async function keepSandedThrough(): Promise<void> {
  const file = structuredClone(DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.file) as BoardFile;
  const at = "2026-04-11T12:00";
  const through = { kind: "sand-through", at, fromCentreline: "5 in", size: "1 in" } as const;
  const record = [
    ...(file.record ?? []),
    { ...through, id: "deck", shows: "foam", face: "deck", side: "left", fromTail: "20 in" } as const,
    { ...through, id: "bottom", shows: "weave", face: "bottom", side: "right", fromTail: "40 in" } as const,
  ];
  await keep("sanded-through", { ...file, record });
}

async function keep(id: string, file: BoardFile): Promise<void> {
  const kept = await fetch(new URL(`api/boards/${id}`, site.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(file),
  });
  if (!kept.ok) throw new Error(await kept.text());
}

/** Answers one call in the server's place. */
async function answer(page: Page, call: string, body: object): Promise<void> {
  await page.route(`**/api/${call}`, (route) => route.fulfill({ json: body }));
}

interface State {
  readonly name: string;
  readonly path: string;
  /** What of the page no other state or test looks at; all of it if left out. */
  readonly within?: string;
  /** Before the page is there. */
  readonly before?: (page: Page) => Promise<void>;
  /** Until it is as it is to be looked at. */
  readonly until: (page: Page) => Promise<void>;
}

/** The versions are in a fold. */
async function unfold(page: Page): Promise<void> {
  await page.locator("#papers").waitFor();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
  await page.locator(".versions table").first().waitFor();
}

const STATES: readonly State[] = [
  {
    name: "the saved versions of a board",
    path: "board/five-ten-quad",
    within: ".versions",
    until: unfold,
  },
  {
    name: "the back of a number",
    path: "board/five-ten-quad",
    within: "dialog",
    async until(page) {
      await page.locator('#fins [data-why="finset.marks[front-left].toeRad"]').first().click();
      await page.getByRole("dialog").locator("[aria-busy=false]").waitFor();
    },
  },
  {
    name: "the words of a part",
    path: "board/six-four-tri",
    within: "dialog",
    async until(page) {
      await page
        .locator("#fins")
        .getByRole("button", { name: /^words/ })
        .click();
      await page.getByRole("dialog").locator("dt").first().waitFor();
    },
  },
  { name: "all words", path: "words", until: (page) => page.locator(".words dt").first().waitFor() },
  {
    name: "a board that is stopped",
    path: "board/stopped",
    within: ".blockers, .build-line, .top, #mix",
    async until(page) {
      await page.locator("#papers").waitFor();
      await page.getByRole("region", { name: "What stops the build" }).waitFor();
    },
  },
  {
    name: "the open repairs of a board",
    path: "board/sanded-through",
    within: "#seal",
    async until(page) {
      await page.locator("#papers").waitFor();
      await page
        .locator("#seal")
        .getByRole("img", { name: /repairs/ })
        .waitFor();
    },
  },
  {
    name: "a board that is not there",
    path: "board/no-such-board",
    until: (page) => page.getByRole("heading", { name: "This board cannot be opened" }).waitFor(),
  },
  {
    name: "an empty Shed",
    path: "",
    before: (page) => answer(page, "boards", { boards: [] }),
    until: (page) => page.getByText("No boards yet.").waitFor(),
  },
  {
    name: "devices",
    path: "devices",
    until: (page) => page.getByRole("heading", { name: "Let in", exact: true }).waitFor(),
  },
  {
    name: "a device that is not let in",
    path: "pair",
    before: (page) => answer(page, "access", { here: false, shared: true, secure: false, device: null }),
    until: (page) => page.getByLabel("Code, eight digits").waitFor(),
  },
  {
    name: "no page at all",
    path: "nowhere",
    until: (page) => page.getByRole("heading", { name: "Nothing here" }).waitFor(),
  },
];

const VIEWPORTS = { paper: [360, 740], night: [1440, 900], sun: [820, 1180] } as const;

describe.each(["paper", "night", "sun"] as const)("in %s light", (light) => {
  const [width, height] = VIEWPORTS[light];
  test.each(STATES)(
    "$name is for everyone, and within the page",
    async ({ path, within = "html", before, until }) => {
      const page = await site.open("icon.svg", { light, viewport: { width, height }, keeps: false });
      await before?.(page);
      await page.goto(new URL(path, site.address).href);
      await until(page);
      const { violations } = await new AxeBuilder({ page }).include(within).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
        .toBeLessThanOrEqual(0);
      await page.context().close();
    },
  );
});
