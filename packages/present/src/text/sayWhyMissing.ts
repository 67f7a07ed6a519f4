import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellPhrase } from "../language/tellPhrase";

export type StageName =
  | "shape"
  | "finset"
  | "layup"
  | "cutplan"
  | "mix"
  | "sanding"
  | "weight"
  | "cost"
  | "steps"
  | "calendar";

/** Why a stage of the plan is not there, in the words of the findings that say so. */
export function sayWhyMissing(plan: Plan, stage: StageName, reader: Reader): readonly string[] {
  const own = plan.findings.filter(
    (finding) =>
      finding.code.startsWith(`${stage}.`) || finding.path === stage || finding.path.startsWith(`${stage}.`),
  );
  const t = tell(reader);
  const blockers = own.filter((finding) => finding.severity === "blocker");
  const reasons = blockers.length > 0 ? blockers : own;
  if (reasons.length === 0) return [t`Not worked out; see the blockers.`];
  return reasons.map((finding) => tellPhrase(finding.says, reader));
}
