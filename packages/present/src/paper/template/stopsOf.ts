import type { Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { tellPhrase } from "../../language/tellPhrase";
import { asSentence } from "../../words/asSentence";

/** What stops the build, in whole sentences with the place it concerns. */
export function stopsOf(plan: Plan, reader: Reader): readonly string[] {
  return plan.findings
    .filter(({ severity }) => severity === "blocker")
    .map(({ says, path }) => asSentence(`${tellPhrase(says, reader)} (${path})`));
}
