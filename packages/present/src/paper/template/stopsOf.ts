import { formatPhrase, type Plan, type Units } from "@lapline/engine";
import { asSentence } from "../../words/asSentence";

/** What stops the build, in whole sentences with the place it concerns. */
export function stopsOf(plan: Plan, units: Units): readonly string[] {
  return plan.findings
    .filter(({ severity }) => severity === "blocker")
    .map(({ says, path }) => asSentence(`${formatPhrase(says, units)} (${path})`));
}
