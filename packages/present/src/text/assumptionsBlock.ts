import type { Assumption } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { asSentence } from "../words/asSentence";
import { assumedName } from "../words/assumedName";
import type { Block } from "./Block";
import { wrapText } from "./wrapText";

/** What nobody gave and the plan took, with where it is from. */
export function assumptionsBlock(assumptions: readonly Assumption[], reader: Reader): Block {
  const t = tell(reader);
  const lines = assumptions.flatMap((assumption) => assumptionLines(assumption, reader));
  return { title: t`ASSUMED`, lines: lines.length > 0 ? lines : [`  ${t`nothing`}`] };
}

function assumptionLines({ path, says, source }: Assumption, reader: Reader): readonly string[] {
  const t = tell(reader);
  return wrapText(
    `- ${assumedName(path, reader)}: ${asSentence(tellPhrase(says.value, reader))} ${asSentence(tellPhrase(says.why, reader))} ${t`Source: ${source}`} (${path})`,
    {
      indent: 2,
      hanging: 4,
    },
  );
}
