import { type Finding, type Phrase, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { sortFindings } from "../words/sortFindings";
import type { Block } from "./Block";
import { wrapText } from "./wrapText";

/** Everything the builder should know, blockers first. */
export function findingsBlock(findings: readonly Finding[], reader: Reader): Block {
  const t = tell(reader);
  const lines = sortFindings(findings).flatMap((finding) => findingLines(finding, reader));
  return { title: t`FINDINGS`, lines: lines.length > 0 ? lines : [`  ${t`none`}`] };
}

const SEVERITIES: Readonly<Record<Finding["severity"], Phrase>> = {
  blocker: say`BLOCKER`,
  warning: say`WARNING`,
  note: say`NOTE`,
};

/** One finding: how grave, what, and at which place of the board file or the plan. */
export function findingLines(finding: Finding, reader: Reader): readonly string[] {
  const place = finding.path === "" ? "" : ` (${finding.path})`;
  const text = `${tellPhrase(SEVERITIES[finding.severity], reader)}: ${tellPhrase(finding.says, reader)}${place}`;
  return wrapText(text, { indent: 2, hanging: 4 });
}
