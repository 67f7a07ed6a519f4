import type { Page } from "playwright-core";

/** One picture: a page of the app, and what is opened or looked at on it. */
export interface View {
  readonly name: string;
  readonly path: string;
  /** Comes in by the door of another device that is not let in yet. */
  readonly isOtherDevice?: boolean;
  /** Done once the page is there; what it returns stands at the top of the picture. */
  readonly show?: (page: Page) => Promise<string | undefined>;
}

const BOARD = "board/five-ten-quad";

/** The parts of a board's page after Measure, which stands at its top, in the order of the build. */
const PARTS = ["fins", "glass", "cut", "mix", "sand", "seal", "water", "papers"] as const;

const part = (id: string): View => ({ name: id, path: BOARD, show: async () => `#${id}` });

/** The length is answered, so that the rest of the form follows from something. */
async function answerLength(page: Page): Promise<undefined> {
  await page.locator(".question input[type=text]").first().fill(`6'2"`);
  await page.locator("h1").click();
}

/** Each board is drawn when its turn comes. */
async function everyBoard(page: Page): Promise<string> {
  await page.waitForFunction(() => {
    const boards = document.querySelectorAll(".boards > li").length;
    return boards > 0 && document.querySelectorAll(".boards .standing-state").length === boards;
  });
  return "html";
}

async function openWhy(page: Page): Promise<undefined> {
  await page.locator("#mix .why-number").first().click();
  const drawer = page.getByRole("dialog");
  await drawer.locator("[aria-busy=false]").waitFor();
}

async function openSolid(page: Page): Promise<string> {
  await page.locator("#measure .solid-fold > button").click();
  await page.locator("#measure .solid-fold canvas").waitFor();
  return "#measure .solid-fold";
}

/** Every page of the app; those of one address stand together, so that it is opened once. */
export const VIEWS: readonly View[] = [
  { name: "shed", path: "", show: everyBoard },
  { name: "new-board", path: "new", show: answerLength },
  { name: "measure", path: BOARD, show: async () => ".board > main" },
  ...PARTS.map(part),
  { name: "gate", path: BOARD, show: async () => ".gate" },
  { name: "solid", path: BOARD, show: openSolid },
  { name: "why", path: BOARD, show: openWhy },
  { name: "bench", path: `${BOARD}/bench/laminate-deck` },
  { name: "bench-cup", path: `${BOARD}/bench/laminate-deck#cup-1` },
  { name: "bench-clock", path: `${BOARD}/bench/laminate-bottom#clock` },
  { name: "bench-weigh-in", path: `${BOARD}/bench/laminate-bottom#weigh` },
  { name: "words", path: "words" },
  { name: "devices", path: "devices" },
  { name: "pairing", path: "", isOtherDevice: true },
];
