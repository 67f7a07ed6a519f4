import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { formatPlanText } from "../../src";
import { composeSheet } from "../../src/paper/jobsheet/composeSheet";
import type { Entry } from "../../src/paper/jobsheet/Ledger";
import { labelPages } from "../../src/paper/jobsheet/labels/labelPages";
import { createTypesetter } from "../../src/paper/pdf/renderPdf";
import { PAPER_BOARDS } from "./paperBoards";
import { textsOf } from "./readPages";
import { requestFor } from "./sheetBoards";

const type = createTypesetter();
const reader = { units: "mm", language: "en" } as const;
const CUP = /^mix\.coats\[(.+)\]\.cups\[(\d+)\]\.(\w+)$/;

/** The figures of each cup as they are printed, by coat and cup. */
function printedCups(entries: readonly Entry[]): ReadonlyMap<string, Readonly<Record<string, string>>> {
  const cups = new Map<string, Record<string, string>>();
  for (const { path, text } of entries) {
    const [, coat, cup, key = ""] = CUP.exec(path) ?? [];
    if (coat === undefined) continue;
    const name = `${coat} ${cup}`;
    cups.set(name, { ...cups.get(name), [key]: text });
  }
  return cups;
}

const figure = (text = ""): number =>
  Number(/-?\d+(?:\.\d+)?/.exec(text)?.[0]) * (/\bkg\b/.test(text) ? 1000 : 1);

/** The sheets of peroxide: 1 to 2 % by mass (resins.ts, `peroxide-sheets`). */
const PEROXIDE = { least: 0.01, most: 0.02 };
/** Half of a hundredth of a gram, the finest step of a shop's scale, on the smallest dose of 0.2 g. */
const PRINTED = 0.025;

describe.each(PAPER_BOARDS)("$id", (board) => {
  const request = requestFor(board, reader);
  // One for the wall, one for the cups.
  const printed = [composeSheet(request, type).ledger, labelPages(request, type).ledger];
  const peroxide = new Set(
    board.plan.mix?.coats.filter(({ resin }) => resin === "polyester").map(({ id }) => id),
  );

  test("a dose weighed as the paper has it stays within the resin's range", () => {
    for (const { entries } of printed)
      for (const [name, cup] of printedCups(entries)) {
        if (!peroxide.has(name.split(" ")[0] ?? "")) continue;
        const ratio = figure(cup.hardenerMassKg) / figure(cup.baseMassKg);
        expect(ratio, name).toBeGreaterThanOrEqual(PEROXIDE.least * (1 - PRINTED));
        expect(ratio, name).toBeLessThanOrEqual(PEROXIDE.most * (1 + PRINTED));
      }
  });

  test("every printed dose is within 3 % of the plan's own", () => {
    for (const { entries } of printed)
      for (const [name, cup] of printedCups(entries)) {
        const [id, i] = name.split(" ");
        const planned = board.plan.mix?.coats.find((coat) => coat.id === id)?.cups[Number(i)];
        const hardenerKg = planned?.hardenerMassKg ?? 0;
        if (hardenerKg > 0)
          expect(Math.abs(figure(cup.hardenerMassKg) / (1000 * hardenerKg) - 1), name).toBeLessThan(0.03);
      }
  });
});

const demo = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.text ?? "");

function planOf(changes: object) {
  const read = readBoardFile(JSON.stringify({ ...demo, ...changes }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return planBuild(read.board);
}

test("drops are whole", () => {
  const plan = planOf({ shop: { ...demo.shop, dropsPerMl: 24 } });
  const { ledger } = composeSheet(requestFor({ id: "drops", plan }, reader), type);
  const drops = ledger.entries.filter(({ path }) => path.endsWith("hardenerDrops"));
  expect(drops.length).toBeGreaterThan(0);
  for (const { path, text } of drops) expect(text, path).toMatch(/^\d+$/);
});

test("a tinted cup is filled from the master batch by the mass of base and tint, which the label names", () => {
  const plan = planOf({ glass: { ...demo.glass, tint: { laminate: "2 %" } } });
  const request = requestFor({ id: "tinted", plan }, reader);
  const coat = plan.mix!.coats.find(({ id }) => id === "laminate-deck")!;
  const { pages, ledger } = labelPages(request, type);
  const words = pages.flatMap((page) => textsOf(page, type)).map(({ text }) => text);
  const [cup] = coat.cups;
  const at = "mix.coats[laminate-deck].cups[0]";
  const shown = (key: string) => ledger.entries.find(({ path }) => path === `${at}.${key}`)?.text;
  expect(figure(shown("tintedBaseKg"))).toBeCloseTo(1000 * (cup!.baseMassKg * 1.02), 0);
  expect(words).toContain(`tinted base, ${shown("tintMassKg")} of tint in it`);
  expect(shown("baseMassKg")).toBeUndefined();
});

test("the Sheet and the text tell the same time without load on the leash plug, and the same weight", () => {
  for (const { plan } of PAPER_BOARDS.filter(({ plan: { finset } }) => finset?.leashPlug)) {
    const words = formatPlanText(plan, reader).replace(/\s+/g, " ");
    const pages = composeSheet(requestFor({ id: "plug", plan }, reader), type).pages;
    const sheet = pages
      .flatMap((page) => textsOf(page, type))
      .map(({ text }) => text)
      .join(" ");
    const [, time] = /No load on it for ([^,]+),/.exec(sheet) ?? [];
    expect(words).toContain(`No load for ${time},`);
    expect(sheet).toMatch(/pull it straight up with the weight of/);
  }
});

test("a swallow's diagonals start at its crotch, and its marks where the file's distances do", () => {
  const survey = { ...demo.survey, tail: { kind: "swallow", width: "7 in", depth: "4 in" } };
  for (const [fromTailOf, word, key] of [
    ["tips", "tips", "fromTailTapeM"],
    ["crotch", "crotch", "fromCrotchTapeM"],
  ] as const) {
    const plan = planOf({ survey, fins: { ...demo.fins, fromTailOf } });
    const { pages, ledger } = composeSheet(requestFor({ id: "swallow", plan }, reader), type);
    const texts = pages.flatMap((page) => textsOf(page, type)).map(({ text }) => text);
    expect(texts).toContain("crotch");
    expect(texts).not.toContain("tail's middle");
    expect(texts.join(" ")).toContain(`from ${word}`);
    expect(ledger.entries.map(({ path }) => path)).toContain(`finset.marks[front-left].trailing.${key}`);
  }
});
