import type { Explanation, Influence } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { influenceSentences, whyWords } from "../words/whyWords";
import { findingLines } from "./findingsBlock";
import { formatTable } from "./formatTable";
import { wrapText } from "./wrapText";

/** The back of the sheet for one number: the working in words, the formula, what went in, where it is from, what moves it. */
export function formatWhyText(
  explanation: Explanation,
  influences: readonly Influence[],
  reader: Reader,
): string {
  const t = tell(reader);
  const { value, words, formula, inputs, sources, assumed } = whyWords(explanation, reader);
  const [, ...inputLines] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
    ],
    inputs.map((input) => [input.name, input.value]),
  );
  const item = { indent: 2, hanging: 4 };
  const lines = [
    ...wrapText(`${explanation.path} = ${value}`),
    "",
    ...wrapText(words),
    "",
    ...wrapText(t`Formula: ${formula}`, { hanging: 2 }),
    ...part(t`From:`, inputLines),
    ...part(
      t`Source:`,
      sources.flatMap((source) => wrapText(source, item)),
    ),
    ...part(
      t`Assumed:`,
      assumed.flatMap((each) => wrapText(`- ${each.words} (${each.path})`, item)),
    ),
    ...part(
      t`What would change it most:`,
      influenceSentences(influences, reader).flatMap((sentence) => wrapText(`- ${sentence}`, item)),
    ),
    ...part(
      t`Findings here:`,
      explanation.findings.flatMap((finding) => findingLines(finding, reader)),
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function part(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}
