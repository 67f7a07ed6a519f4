import type { Explanation, Quantity } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { assumptionLines } from "./assumptionsBlock";
import { findingLines } from "./findingsBlock";
import { formatTable } from "./formatTable";
import { wrapText } from "./wrapText";

const CONFIDENCE: Readonly<Record<string, string>> = {
  C: "read in the source",
  c: "second-hand",
  D: "derived",
  M: "from memory",
  CP: "common practice",
};

/** The back of the sheet for one number: the working in words, the formula, what went in, where it is from. */
export function formatWhyText(explanation: Explanation, reader: Reader): string {
  const { path, value, words, formula, inputs, sources, assumptions, findings } = explanation;
  const [, ...inputLines] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
    ],
    inputs.map((input) => [input.name, show(input.value, reader)]),
  );
  const lines = [
    ...wrapText(`${path} = ${show(value, reader)}`),
    "",
    ...wrapText(words),
    "",
    ...wrapText(`Formula: ${formula}`, { hanging: 2 }),
    ...part("From:", inputLines),
    ...part(
      "Source:",
      sources.flatMap((source) =>
        wrapText(`${source.title} (${CONFIDENCE[source.confidence] ?? source.confidence})`, {
          indent: 2,
          hanging: 4,
        }),
      ),
    ),
    ...part("Assumed:", assumptions.flatMap(assumptionLines)),
    ...part(
      "Findings here:",
      findings.flatMap((finding) => findingLines(finding, reader)),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function part(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}

function show(value: Quantity | string, reader: Reader): string {
  return typeof value === "string" ? value : showQuantity(value, reader);
}
