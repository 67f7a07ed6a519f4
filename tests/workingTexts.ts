import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { explain, type Phrase, planBuild, type Quantity, type Told } from "@lapline/engine";
import { WORKINGS } from "../packages/engine/src/workings";
import { keyOfPhrase } from "../packages/present/src/language/keyOfPhrase";
import { listNumbers } from "./listNumbers";

/** Functions, variables and paths of the plan: a formula of these alone reads the same in every language. */
const SYMBOLS = /\b(?:max|min|mean|asin|atan|cos|sin|tan|exp|ln|x|y|z|[a-z]+(?:\.[a-z]+)+)\b|_\w+/g;

/** What the workings of all numbers say: their words and formulas. */
export function workingTexts(): readonly string[] {
  const workings = WORKINGS.flatMap((table) => Object.values(table));
  const formulas = workings.flatMap(({ formula }) => textsOf(formula)).filter(hasWords);
  return [...new Set([...workings.flatMap(({ words }) => textsOf(words)), ...formulas])];
}

/** What the inputs of the demo boards' numbers are called, and what stands there in words. */
export function inputTexts(): readonly string[] {
  const texts = DEMO_BOARDS.flatMap(({ text }) => {
    const read = readBoardFile(text);
    if (!read.ok) throw new Error("a demo board must be readable");
    const plan = planBuild(read.board);
    const { findings, assumptions, ...numbers } = plan;
    return listNumbers(numbers, "").flatMap((path) => {
      const explanation = explain(read.board, { ...numbers, findings, assumptions }, path);
      if ("message" in explanation) return [];
      return explanation.inputs.flatMap(({ name, value }) => [...textsOf(name), ...textsOf(value)]);
    });
  });
  return [...new Set(texts)];
}

/** A formula with a word of three letters or more that is no symbol. */
function hasWords(formula: string): boolean {
  return /\p{Ll}{3,}/u.test(formula.replace(SYMBOLS, ""));
}

/** A text's own key, and those of what was put into it. */
function textsOf(told: Told | Quantity): readonly string[] {
  if (typeof told === "string") return [told];
  if ("dimension" in told) return [];
  return [keyOfPhrase(told), ...told.flatMap(within)];
}

function within(part: Phrase[number]): readonly string[] {
  if (typeof part === "string") return [];
  if ("phrase" in part) return textsOf(part.phrase);
  return "word" in part ? [part.word] : [];
}
