import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";
import { sortFindings } from "../words/sortFindings";
import { asciiText } from "./asciiText";

/** What is wrong or doubtful in the readings and choices, a line for each, blockers first; made to be read or searched. */
export function formatCheckText(plan: Plan, reader: Reader): string {
  const lines = sortFindings(plan.findings).map((finding) => {
    const place = finding.path === "" ? "plan" : finding.path;
    return `${finding.severity}: ${place}: ${tellPhrase(finding.says, reader).replace(/\s+/g, " ")} [${finding.code}]`;
  });
  return `${asciiText((lines.length > 0 ? lines : ["Nothing found."]).join("\n"))}\n`;
}
