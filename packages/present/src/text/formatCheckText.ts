import { formatPhrase, type Plan } from "@lapline/engine";
import { sortFindings } from "../words/sortFindings";
import { asciiText } from "./asciiText";
import type { TextOptions } from "./formatPlanText";
import { gelPointsPlot, oddResins } from "./mix/gelPointsPlot";

/** What is wrong or doubtful in the readings and choices, a line for each, blockers first; made to be read or searched.
 * Gel points that contradict each other are plotted below. */
export function formatCheckText(plan: Plan, { units }: TextOptions): string {
  const lines = sortFindings(plan.findings).map((finding) => {
    const place = finding.path === "" ? "plan" : finding.path;
    return `${finding.severity}: ${place}: ${formatPhrase(finding.says, units).replace(/\s+/g, " ")} [${finding.code}]`;
  });
  const found = asciiText((lines.length > 0 ? lines : ["Nothing found."]).join("\n"));
  const plots = oddResins(plan).flatMap((resin) => ["", ...gelPointsPlot(resin, units)]);
  return `${[found, ...plots].join("\n")}\n`;
}
