import { type Explanation, type Phrase, type Quantity, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { assumptionLines } from "./assumptionsBlock";
import { findingLines } from "./findingsBlock";
import { formatTable } from "./formatTable";
import { wrapText } from "./wrapText";

const CONFIDENCE: Readonly<Record<string, Phrase>> = {
  C: say`read in the source`,
  c: say`second-hand`,
  D: say`derived`,
  M: say`from memory`,
  CP: say`common practice`,
};

function confidenceOf(letter: string, reader: Reader): string {
  const words = CONFIDENCE[letter];
  return words === undefined ? letter : tellPhrase(words, reader);
}

/** The back of the sheet for one number: the working in words, the formula, what went in, where it is from. */
export function formatWhyText(explanation: Explanation, reader: Reader): string {
  const t = tell(reader);
  const { path, value, words, formula, inputs, sources, assumptions, findings } = explanation;
  const [, ...inputLines] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
    ],
    inputs.map((input) => [tellText(input.name, reader), show(input.value, reader)]),
  );
  const lines = [
    ...wrapText(`${path} = ${show(value, reader)}`),
    "",
    ...wrapText(tellText(words, reader)),
    "",
    ...wrapText(t`Formula: ${formula}`, { hanging: 2 }),
    ...part(t`From:`, inputLines),
    ...part(
      t`Source:`,
      sources.flatMap((source) =>
        wrapText(`${source.title} (${confidenceOf(source.confidence, reader)})`, {
          indent: 2,
          hanging: 4,
        }),
      ),
    ),
    ...part(
      t`Assumed:`,
      assumptions.flatMap((assumption) => assumptionLines(assumption, reader)),
    ),
    ...part(
      t`Findings here:`,
      findings.flatMap((finding) => findingLines(finding, reader)),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function part(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}

/** Lengths in millimetres beside inches, so that the figures can be followed by hand. */
function show(value: Quantity | string, reader: Reader): string {
  if (typeof value === "string") return tellPhrase(say`${value}`, reader);
  const shown = showQuantity(value, reader);
  if (value.dimension !== "length" || reader.units === "mm") return shown;
  const inMm = showQuantity({ ...value, grain: "fine" }, { ...reader, units: "mm" });
  return inMm === shown ? shown : `${shown} (${inMm})`;
}
