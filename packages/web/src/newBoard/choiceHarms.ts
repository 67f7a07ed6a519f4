import type { Finding } from "@lapline/engine";
import type { PlanRead } from "../plan/GoodBoard";

/** What the choice of foam and resin itself makes impossible. What the missing readings cause is the page's to lead through. */
export function choiceHarms(read: PlanRead): readonly Finding[] {
  if (!read.ok) return [];
  return read.plan.findings.filter(
    ({ severity, path }) => severity === "blocker" && /^(glass|blank)\./.test(path),
  );
}
