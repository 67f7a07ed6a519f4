import { formatPhrase, type Plan, type Units } from "@lapline/engine";

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
export function sayWhyMissing(plan: Plan, stage: StageName, units: Units): readonly string[] {
  const own = plan.findings.filter(
    (finding) =>
      finding.code.startsWith(`${stage}.`) || finding.path === stage || finding.path.startsWith(`${stage}.`),
  );
  const blockers = own.filter((finding) => finding.severity === "blocker");
  const reasons = blockers.length > 0 ? blockers : own;
  if (reasons.length === 0) return ["Not worked out; see the blockers."];
  return reasons.map((finding) => formatPhrase(finding.says, units));
}
