import type { Assumption } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { assumedWords } from "../words/assumedWords";
import type { Block } from "./Block";
import { wrapText } from "./wrapText";

/** What nobody gave and the plan took, with where it is from. */
export function assumptionsBlock(assumptions: readonly Assumption[], reader: Reader): Block {
  const t = tell(reader);
  const lines = assumptions.flatMap((assumption) => assumptionLines(assumption, reader));
  return { title: t`ASSUMED`, lines: lines.length > 0 ? lines : [`  ${t`nothing`}`] };
}

function assumptionLines(assumption: Assumption, reader: Reader): readonly string[] {
  const t = tell(reader);
  const { name, taken, source } = assumedWords(assumption, reader);
  return wrapText(`- ${name}: ${taken} ${t`Source: ${source}`} (${assumption.path})`, {
    indent: 2,
    hanging: 4,
  });
}
