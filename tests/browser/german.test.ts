import { DEMO_BOARDS } from "@lapline/contract";
import { listMaterials } from "@lapline/engine";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { DE as DE_OF_PAGES } from "../../packages/present/src/language/de";
import { DE_WORKINGS } from "../../packages/present/src/language/de/workings";
import { openSite, type Site } from "../../packages/web/tests/openSite";
import { buildFirst } from "../buildFirst";
import { moveTo } from "./moveTo";

let site: Site;
beforeAll(async () => {
  buildFirst("web");
  site = await openSite();
  await keepBoard();
});
afterAll(() => site.close());

/** Words of a text, without its places for what is put in; a unit or a number is none. */
const wordsOf = (text: string): readonly string[] =>
  text
    .replace(/\{\d+\}/g, " ")
    .toLowerCase()
    .match(/\p{L}[\p{L}'-]*\p{L}/gu) ?? [];

const CATALOGUE: Readonly<Record<string, string>> = { ...DE_OF_PAGES, ...DE_WORKINGS };
const GERMAN = new Set(Object.values(CATALOGUE).flatMap(wordsOf));
/** Words that the English texts have and the German ones do nowhere. */
const ENGLISH_ONLY = new Set(
  Object.keys(CATALOGUE)
    .flatMap(wordsOf)
    .filter((word) => !GERMAN.has(word)),
);

/** What the plan and the board file call things by; a reader has words for them. */
const isCode = (word: string): boolean => /^[a-z]+(?:-[a-z]+)+$/.test(word) && !GERMAN.has(word);

/** A board that its builder named in German, so that every English word on its page is the page's own. */
async function keepBoard(): Promise<void> {
  const file = DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.file;
  const body = JSON.stringify({ ...file, name: "Probe" });
  const kept = await fetch(new URL("api/boards/probe", site.address), {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body,
  });
  if (!kept.ok) throw new Error(await kept.text());
}

/** What stands on the page as somebody wrote it: names of the other boards, ids of materials beside what they are, and the version of the app under test. */
const WRITTEN = [
  "test",
  ...DEMO_BOARDS.map(({ file }) => file.name),
  ...Object.values(listMaterials(undefined))
    .flat()
    .map(({ id }) => `${id},`),
];

/** Every text of the page that somebody reads or hears, with all its folds open. */
async function readTexts(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
  });
  await page.waitForFunction(() => document.querySelector("[aria-busy=true]") === null);
  return page.evaluate(() => {
    const HEARD = ["aria-label", "title", "alt", "placeholder"];
    const texts = new Set<string>();
    const walker = document.createTreeWalker(document.documentElement, NodeFilter.SHOW_ALL);
    for (let node: Node | null = walker.currentNode; node !== null; node = walker.nextNode()) {
      const element = node instanceof Element ? node : node.parentElement;
      // Of another language, of no reader, or to be typed as it stands.
      if (element === null || element.closest("[lang=en], code, script, style, noscript, .why-path"))
        continue;
      if (node instanceof Text) texts.add(node.data.trim());
      if (node instanceof Element) for (const name of HEARD) texts.add(node.getAttribute(name)?.trim() ?? "");
    }
    return [...texts].filter((text) => text !== "");
  });
}

/** What of the texts is English or a code, each with the text that it stands in. */
function listEnglish(texts: readonly string[]): readonly string[] {
  return texts.flatMap((text) =>
    wordsOf(WRITTEN.reduce((left, written) => left.replaceAll(written, ""), text))
      .filter((word) => ENGLISH_ONLY.has(word) || isCode(word))
      .map((word) => `${word}: ${text}`),
  );
}

const PAGES: readonly (readonly [path: string, until: string])[] = [
  ["", ".boards li"],
  ["new", ".questions"],
  ["words", ".words dt"],
  ["devices", ".page h1"],
  ["nowhere", ".page h1"],
  ["board/no-such-board", "h1"],
  ["board/probe", "#papers"],
];

/** One of each kind of screen. */
const SCREENS = [
  "laminate-deck",
  "laminate-deck#lay",
  "laminate-deck#cup-1",
  "laminate-bottom#clock",
  "laminate-bottom#weigh",
  "mark-fins#mark-front-trailing",
  "mark-fins#mark-rear-stand",
  "set-boxes#gate-string-front-left",
  "set-leash-plug#plug",
  "sand-deck#paper-P120",
  "sand-deck#through",
  "water",
];

test("says nothing in English and shows no code to who reads German", async () => {
  const page = await site.open("", { language: "de", clock: "2026-04-11T11:20:00", keeps: false });
  const found: string[] = [];
  for (const [path, until] of PAGES) {
    await moveTo(page, path);
    await page.locator(until).first().waitFor();
    found.push(...listEnglish(await readTexts(page)).map((each) => `/${path} ${each}`));
  }
  await page.locator("#mix .why-number").first().click();
  await page.getByRole("dialog").locator("[aria-busy=false]").waitFor();
  found.push(...listEnglish(await readTexts(page)).map((each) => `why ${each}`));
  for (const screen of SCREENS) {
    await moveTo(page, `board/probe/bench/${screen}`);
    await page.locator(".bench h1").waitFor();
    found.push(...listEnglish(await readTexts(page)).map((each) => `bench/${screen} ${each}`));
  }
  expect([...new Set(found)]).toEqual([]);
  await page.context().close();
});
