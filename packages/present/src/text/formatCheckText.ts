import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";
import { tellText } from "../language/tellText";
import { sortFindings } from "../words/sortFindings";
import { barredSentence } from "../words/waterWords";
import { asciiText } from "./asciiText";
import { gelPointsPlot, oddResins } from "./mix/gelPointsPlot";

/** What is wrong or doubtful in the readings and choices, a line for each, blockers first; made to be read or searched.
 * Gel points that contradict each other are plotted below. */
export function formatCheckText(plan: Plan, reader: Reader): string {
  const t = tell(reader);
  const lines = sortFindings(plan.findings).map((finding) => {
    const place = finding.path === "" ? t`plan` : finding.path;
    return `${tellText(finding.severity, reader)}: ${place}: ${tellPhrase(finding.says, reader).replace(/\s+/g, " ")} [${finding.code}]`;
  });
  const barred = barredSentence(plan, reader);
  const said = [...(barred === null ? [] : [barred]), ...(lines.length > 0 ? lines : [t`Nothing found.`])];
  const found = asciiText(said.join("\n"));
  const plots = oddResins(plan).flatMap((resin) => ["", ...gelPointsPlot(resin, reader)]);
  return `${[found, ...plots].join("\n")}\n`;
}
