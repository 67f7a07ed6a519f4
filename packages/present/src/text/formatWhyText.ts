import { type Explanation, formatQuantity, type Quantity, type Units } from "@lapline/engine";
import { assumptionLines } from "./assumptionsBlock";
import { findingLines } from "./findingsBlock";
import type { TextOptions } from "./formatPlanText";
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
export function formatWhyText(explanation: Explanation, { units }: TextOptions): string {
  const { path, value, words, formula, inputs, sources, assumptions, findings } = explanation;
  const [, ...inputLines] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
    ],
    inputs.map((input) => [input.name, show(input.value, units)]),
  );
  const lines = [
    ...wrapText(`${path} = ${show(value, units)}`),
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
      findings.flatMap((finding) => findingLines(finding, units)),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function part(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}

function show(value: Quantity | string, units: Units): string {
  return typeof value === "string" ? value : formatQuantity(value, units);
}
