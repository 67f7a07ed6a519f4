import { DIMENSION_WORDS } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { DE as DE_OF_PAGES } from "../packages/present/src/language/de";
import { DE_WORKINGS } from "../packages/present/src/language/de/workings";
import { GLOSSARY } from "../packages/web/src/words/glossary";
import { readTexts } from "./readTexts";
import { readSourceFiles, type SourceFile } from "./sourceFiles";
import { inputTexts, workingTexts } from "./workingTexts";

const glossary = GLOSSARY.flatMap(({ title, entries }) => [
  title,
  ...entries.flatMap(({ word, means }) => [word, means]),
]);
const DE = { ...DE_OF_PAGES, ...DE_WORKINGS };

/** Where every text has its German. The list only grows, until it is every folder whose texts a person reads. */
const TRANSLATED = [
  "packages/contract/src",
  "packages/engine/src/calendar",
  "packages/engine/src/constants",
  "packages/engine/src/cost",
  "packages/engine/src/cutplan",
  "packages/engine/src/finset",
  "packages/engine/src/foundation",
  "packages/engine/src/layup",
  "packages/engine/src/mix",
  "packages/engine/src/sanding",
  "packages/engine/src/shape",
  "packages/engine/src/steps",
  "packages/engine/src/survey",
  "packages/engine/src/weight",
  "packages/present/src/board",
  "packages/present/src/calendar",
  "packages/present/src/cut",
  "packages/present/src/paper/jobsheet",
  "packages/present/src/paper/layPaper.ts",
  "packages/present/src/paper/sheet",
  "packages/present/src/paper/template/cloth",
  "packages/present/src/paper/template/fins",
  "packages/present/src/paper/template/outline",
  "packages/present/src/text/cutBlock.ts",
  "packages/present/src/words/cutWords.ts",
  "packages/web/src",
  "packages/present/src/text",
  "packages/present/src/words",
  "packages/cli/src",
];

const CATALOGUE_FOLDER = "packages/present/src/language/de";

const sources: readonly SourceFile[] = ["engine", "contract", "present", "cli", "web"]
  .flatMap((name) => readSourceFiles(`packages/${name}/src`, /(?<!\.test)\.tsx?$/))
  .filter(({ path }) => !path.startsWith(CATALOGUE_FOLDER));
const texts = sources.map((source) => ({ path: source.path, ...readTexts(source) }));

/** A text without a letter of its own, such as "{1}; {2}", reads the same in every language. */
const hasLetters = (key: string): boolean => /\p{L}/u.test(key.replace(/\{\d+\}/g, ""));
/** Ids of materials, cuts, pieces and papers, times, and sources' own names stay as they are. */
const isName = (key: string): boolean =>
  /^(?:P\d+|\d{4}-\d\d-\d\dT.*|[a-z]+(?:-[a-z]+)*-\d+(?:[,+ ]+[a-z]+-\d+)*|\d.*(?:kJ\/mol)?)$/.test(key);
const placesOf = (text: string): readonly string[] =>
  [...new Set([...text.matchAll(/\{\d+\}/g)].map(([place]) => place))].sort();

describe("German", () => {
  it("stands for every text of the folders that are translated", () => {
    const missing = texts
      .filter(({ path }) => TRANSLATED.some((start) => path.startsWith(start)))
      .flatMap(({ path, said }) =>
        said.filter((key) => hasLetters(key) && !Object.hasOwn(DE, key)).map((key) => `${path}: ${key}`),
      );
    expect(missing).toEqual([]);
  });

  it("stands for the working of every number, and what it is worked out from", () => {
    const missing = [...workingTexts(), ...inputTexts()].filter(
      (key) => /\p{L}{2}/u.test(key.replace(/\{\d+\}/g, "")) && !Object.hasOwn(DE, key) && !isName(key),
    );
    expect(missing).toEqual([]);
  });

  it("stands for what a quantity is called where one is not understood", () => {
    const names = Object.values(DIMENSION_WORDS).map(({ name }) => name);
    expect(names.filter((name) => !Object.hasOwn(DE, name))).toEqual([]);
  });

  it("stands for every word of the glossary and what it means", () => {
    expect(glossary.length).toBeGreaterThan(200);
    expect(glossary.filter((key) => !Object.hasOwn(DE, key))).toEqual([]);
  });

  it("stands for nothing that no source says", () => {
    const known = new Set([
      ...texts.flatMap(({ said, strings }) => [...said, ...strings]),
      ...workingTexts(),
      ...glossary,
    ]);
    // A mark's id is its fin's and its side's.
    const isKnown = (key: string): boolean =>
      known.has(key) || known.has(key.replace(/-(?:left|right)$/, ""));
    expect(Object.keys(DE).filter((key) => !isKnown(key))).toEqual([]);
  });

  it("has the places of the English text, in whatever order", () => {
    const off = Object.entries(DE).filter(([key, text]) => `${placesOf(key)}` !== `${placesOf(text)}`);
    expect(off).toEqual([]);
  });

  it("stands once for each text, and is never empty", () => {
    const keys = readSourceFiles(CATALOGUE_FOLDER, /\.ts$/).flatMap(({ text }) =>
      [...text.matchAll(/^ {2}("(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|\w+):/gm)].map(([, key]) => key),
    );
    expect(keys.filter((key, i) => keys.indexOf(key) !== i)).toEqual([]);
    expect(keys).toHaveLength(Object.keys(DE).length);
    expect(Object.entries(DE).filter(([, text]) => text.trim() === "")).toEqual([]);
  });
});
