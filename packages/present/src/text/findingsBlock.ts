import type { Finding } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";
import { sortFindings } from "../words/sortFindings";
import type { Block } from "./Block";
import { wrapText } from "./wrapText";

/** Everything the builder should know, blockers first. */
export function findingsBlock(findings: readonly Finding[], reader: Reader): Block {
  const lines = sortFindings(findings).flatMap((finding) => findingLines(finding, reader));
  return { title: "FINDINGS", lines: lines.length > 0 ? lines : ["  none"] };
}

/** One finding: how grave, what, and at which place of the board file or the plan. */
export function findingLines(finding: Finding, reader: Reader): readonly string[] {
  const place = finding.path === "" ? "" : ` (${finding.path})`;
  const text = `${finding.severity.toUpperCase().padEnd(8)} ${tellPhrase(finding.says, reader)}${place}`;
  return wrapText(text.replace(/^(\S+)\s+/, "$1: "), { indent: 2, hanging: 4 });
}
