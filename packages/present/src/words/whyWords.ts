import {
  type Explanation,
  type Influence,
  type Phrase,
  type Quantity,
  say,
  type Told,
} from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { tellTold } from "../language/tellTold";
import { asSentence } from "./asSentence";
import { assumedWords } from "./assumedWords";
import { quantityName } from "./quantityName";

/** The back of the sheet for one number, in a reader's words. */
export interface WhyWords {
  readonly value: string;
  readonly words: string;
  readonly formula: string;
  readonly inputs: ReadonlyArray<{ readonly name: string; readonly value: string }>;
  /** With how sure each is. */
  readonly sources: readonly string[];
  readonly assumed: ReadonlyArray<{ readonly path: string; readonly words: string }>;
}

const CONFIDENCE: Readonly<Record<string, Phrase>> = {
  C: say`read in the source`,
  c: say`second-hand`,
  D: say`derived`,
  M: say`from memory`,
  CP: say`common practice`,
};

/** So many of the quantities that move a number are told. */
const MOST_TOLD = 3;
/** A move that rounds to nought is none. */
const SEEN = /[1-9]/;

export function whyWords(explanation: Explanation, reader: Reader): WhyWords {
  const t = tell(reader);
  const { value, words, formula, inputs, sources, assumptions } = explanation;
  return {
    value: show(value, reader),
    words: asSentence(tellTold(words, reader)),
    formula: tellTold(formula, reader),
    inputs: inputs.map((input) => ({
      name: tellTold(input.name, reader),
      value: show(input.value, reader),
    })),
    sources: sources.map(
      ({ title, confidence }) => `${tellText(title, reader)} (${confidenceOf(confidence, reader)})`,
    ),
    assumed: assumptions.map((assumption) => {
      const { name, taken, source } = assumedWords(assumption, reader);
      return { path: assumption.path, words: `${name}: ${taken} ${t`Source: ${source}`}` };
    }),
  };
}

/** What would change a number most, the strongest first; one sentence where nothing of the board file does. */
export function influenceSentences(influences: readonly Influence[], reader: Reader): readonly string[] {
  const t = tell(reader);
  const told = influences
    .map((influence) => ({ ...influence, size: show(influence.moves, reader) }))
    .filter(({ size }) => SEEN.test(size))
    .slice(0, MOST_TOLD);
  if (told.length === 0) return [t`No quantity of the board file moves it by itself.`];
  return told.map(({ path, by, change, size }) => {
    const [name, step] = [quantityName(path, reader), show(by, reader)];
    return change > 0
      ? t`${name}: ${step} more makes it ${size} more.`
      : t`${name}: ${step} more makes it ${size} less.`;
  });
}

function confidenceOf(letter: string, reader: Reader): string {
  const words = CONFIDENCE[letter];
  return words === undefined ? letter : tellPhrase(words, reader);
}

/** Lengths in millimetres beside inches, so that the figures can be followed by hand. */
function show(value: Quantity | Told, reader: Reader): string {
  if (typeof value === "string") return tellPhrase(say`${value}`, reader);
  if (!("dimension" in value)) return tellPhrase(value, reader);
  const shown = showQuantity(value, reader);
  if (value.dimension !== "length" || reader.units === "mm") return shown;
  const inMm = showQuantity({ ...value, grain: "fine" }, { ...reader, units: "mm" });
  return inMm === shown ? shown : `${shown} (${inMm})`;
}
