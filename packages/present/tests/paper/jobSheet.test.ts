import { describe, expect, test } from "vitest";
import type { Point } from "../../src/drawing/Drawing";
import type { Reader } from "../../src/language/Reader";
import { tellPhrase } from "../../src/language/tellPhrase";
import { tellText } from "../../src/language/tellText";
import { composeSheet } from "../../src/paper/jobsheet/composeSheet";
import { DRAWN } from "../../src/paper/jobsheet/Ledger";
import type { PaperBlock } from "../../src/paper/pdf/PaperDocument";
import { createTypesetter } from "../../src/paper/pdf/renderPdf";
import { formatsOf, leavesOf, valueAt } from "./formatsOf";
import { type PlacedText, textsOf } from "./readPages";
import { READERS, requestFor, SANDED_THROUGH, SHEET_BOARDS } from "./sheetBoards";

const type = createTypesetter();
const CASES = SHEET_BOARDS.flatMap((board) =>
  READERS.flatMap((reader) => (["a4", "letter"] as const).map((paper) => ({ board, reader, paper }))),
).map((each) => ({
  ...each,
  name: `${each.board.id}, ${each.reader.units}, ${each.reader.language}, ${each.paper}`,
}));

const flat = (text: string) => text.replace(/\s+/g, " ").trim();
const hasDigit = (text: string) => /\d/.test(text);

describe.each(CASES)("$name", ({ board, reader, paper }) => {
  const request = requestFor(board, reader, paper);
  const { plan } = board;
  const { pages, ledger } = composeSheet(request, type);
  const texts = pages.map((page) => textsOf(page, type));

  test("takes two to four pages, each with whose it is and which of how many", () => {
    expect(pages.length).toBeGreaterThanOrEqual(2);
    expect(pages.length).toBeLessThanOrEqual(4);
    texts.forEach((page, i) => {
      const words = flat(page.map(({ text }) => text).join(" "));
      const [first = ""] = plan.name.split(/(?<=^.{20})/);
      expect(words).toContain(first);
      const place =
        reader.language === "en" ? `page ${i + 1} of ${pages.length}` : `Seite ${i + 1} von ${pages.length}`;
      expect(words).toContain(place);
    });
  });

  test("no text leaves the margins, and none stands on another", () => {
    texts.forEach((page, i) => {
      const { widthMm, heightMm } = pages[i] ?? { widthMm: 0, heightMm: 0 };
      for (const { text, left, right, top, bottom } of page) {
        expect(left, text).toBeGreaterThan(8.5);
        expect(right, text).toBeLessThan(widthMm - 8.5);
        expect(top, text).toBeGreaterThan(8.5);
        expect(bottom, text).toBeLessThan(heightMm - 8.5);
      }
      expect(overlaps(page)).toEqual([]);
    });
  });

  test("no rule of a table runs into the margins", () => {
    for (const page of pages)
      for (const { from, to } of page.blocks.flatMap(linesIn)) {
        expect(Math.min(from.x, to.x)).toBeGreaterThan(8.5);
        expect(Math.max(from.x, to.x)).toBeLessThan(page.widthMm - 8.5);
      }
  });

  test("notes are 8 points at least, figures 10", () => {
    for (const { item, text, inFigure } of texts.flat()) {
      const points = (item.sizeMm * 72) / 25.4;
      expect(points, text).toBeGreaterThanOrEqual(item.role === "figure" && !inFigure ? 10 : 8);
    }
  });

  test("each figure is the plan's own at its path", () => {
    expect(ledger.entries.length).toBeGreaterThan(20);
    for (const { path, text } of ledger.entries.filter((entry) => entry.path !== DRAWN)) {
      const value = valueAt(plan, path);
      if (typeof value === "number") {
        const key = /[^.\]]+$/.exec(path)?.[0] ?? "";
        const shown = [value, Math.abs(value)].flatMap((each) => formatsOf(key, each, reader));
        // Where a width is taken is in its id: `tail-12-in`.
        expect(
          path.startsWith("shape.widths") ? [...shown, "12 in", "305 mm"].join() : shown.join(),
          path,
        ).toContain(
          path.startsWith("shape.widths")
            ? (/^\S+( \d+\/\d+)?(["”]| in| mm)?/.exec(text)?.[0] ?? text)
            : text,
        );
      } else if (/\.says(\[\d+\])?$/.test(path)) expect(text).toBe(tellPhrase(Object(value), reader));
      else if (typeof value === "string" && path.endsWith(".id")) expect(text).toBe(nameOfId(value, reader));
      else if (typeof value === "string" && !path.startsWith("calendar"))
        expect(text.toLowerCase()).toContain(tellText(value, reader).toLowerCase());
      else if (typeof value === "string") expect(text).toContain(value.slice(-5));
      else
        for (const number of text.match(/\d+(?:[.,]\d+)?/g) ?? [])
          expect(numbersBelow(value, path), path).toContain(number);
    }
  });

  /** What a sentence or an ordinal told from a part of the plan may hold: its numbers in any unit, or its place in the list. */
  function numbersBelow(value: unknown, path: string): readonly string[] {
    const place = plan.steps?.findIndex(({ id }) => path === `steps[${id}]`) ?? -1;
    const formats = leavesOf(value).flatMap(([key, each]) =>
      [each, Math.abs(each)].flatMap((n) => formatsOf(key, n, reader)),
    );
    return [`${place + 1}`, ...formats.flatMap((text) => text.match(/\d+(?:[.,]\d+)?/g) ?? [])];
  }

  test("no number is printed that is not in the ledger, but for dates, pages, steps and names", () => {
    const given = [request.madeOn.date, plan.engine, plan.name, "rider A", "NS-041", request.url ?? ""];
    const words = flat(
      texts
        .flat()
        .filter(({ inFigure }) => !inFigure)
        .map(({ text }) => text)
        .join(" "),
    );
    const places = /\b(?:page|Seite) \d+ (?:of|von) \d+/g;
    let rest = given.reduce((left, each) => left.split(each).join(" "), words.replace(places, " "));
    const pieces = ledger.entries.flatMap(({ text }) => flat(text).split(/(?<=\D) (?=\D)/)).filter(hasDigit);
    for (const piece of [...pieces].sort((a, b) => b.length - a.length)) rest = takeOut(rest, piece);
    const steps = new Set((plan.steps ?? []).map((_, i) => `${i + 1}`));
    const numbers = (rest.match(/\S*\d\S*/g) ?? []).map((word) => word.replace(/[:.,;]$/, ""));
    const left = numbers.filter((word) => {
      if (!steps.has(word)) return true;
      steps.delete(word);
      return false;
    });
    expect(left.filter((word) => !isOfName(word))).toEqual([]);
  });

  /** A long name is broken over lines, or shortened with dots. */
  const isOfName = (word: string): boolean =>
    [plan.name, request.url ?? ""].some((name) => name.includes(word.replace(/…$/, "")));

  test("each number of the drawings is the plan's, or a mark of the tape", () => {
    const parts = [plan.shape, plan.finset, plan.layup].flatMap((part) => leavesOf(part));
    const known = new Set(
      parts.flatMap(([key, value]) => [value, Math.abs(value)].flatMap((n) => formatsOf(key, n, reader))),
    );
    const isTapeMark = (text: string) => (reader.units === "inch" ? /^\d+'$/ : /^\d+00$/).test(text);
    for (const { text } of texts.flat().filter((each) => each.inFigure && hasDigit(each.text))) {
      const found = [...known].some((figure) => figure !== "" && hasDigit(figure) && text.includes(figure));
      expect(isTapeMark(text) || found, text).toBe(true);
    }
  });
});

/** The lines of a block as they lie on its page. */
function linesIn(block: PaperBlock): ReadonlyArray<{ readonly from: Point; readonly to: Point }> {
  const { x, y } = block.at ?? { x: 0, y: 0 };
  const move = (point: Point): Point => ({ x: point.x + x, y: point.y + y });
  const own = (block.items ?? []).flatMap((item) =>
    item.kind === "line" ? [{ from: move(item.from), to: move(item.to) }] : [],
  );
  return [...own, ...(block.blocks ?? []).flatMap(linesIn)];
}

/** `deck-2` is the second deck piece. */
function nameOfId(id: string, reader: Reader): string {
  const [kind = "", number = ""] = id.split("-");
  return `${tellText(kind, reader)} ${number}`;
}

/** One occurrence of a figure, which no other digit touches. */
function takeOut(text: string, figure: string): string {
  let at = text.indexOf(figure);
  while (at !== -1) {
    const [before = " ", after = " "] = [text[at - 1], text[at + figure.length]];
    if (!/[\d/]/.test(before) && !/[\d/]/.test(after))
      return `${text.slice(0, at)} ${text.slice(at + figure.length)}`;
    at = text.indexOf(figure, at + 1);
  }
  return text;
}

function overlaps(page: readonly PlacedText[]): readonly string[] {
  return page.flatMap((a, i) =>
    page
      .slice(i + 1)
      .filter(
        (b) =>
          a.left < b.right - 0.2 &&
          b.left < a.right - 0.2 &&
          a.top < b.bottom - 0.2 &&
          b.top < a.bottom - 0.2,
      )
      .map((b) => `${a.text} | ${b.text}`),
  );
}

test.each(READERS)(
  "a spot sanded through is made level and mended on paper too ($units, $language)",
  (reader) => {
    const { ledger } = composeSheet(requestFor(SANDED_THROUGH, reader), type);
    const texts = (pattern: RegExp) => ledger.entries.filter(({ path }) => pattern.test(path));
    expect(texts(/^repairs\[repair-1\]\.hollow\.(?:depthM|resinMassKg)$/)).toHaveLength(2);
    const titles = texts(/^steps\[repair-1-\w+\]\.title$/).map(({ text }) => text);
    expect(titles.length).toBeGreaterThan(3);
    const english = titles.filter((title) => /^Repair 1: /.test(title));
    expect(english).toHaveLength(reader.language === "en" ? titles.length : 0);
  },
);
