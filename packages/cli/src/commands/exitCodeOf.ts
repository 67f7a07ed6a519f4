import type { Plan } from "@lapline/engine";
import type { ExitCode } from "../Terminal";

/** 1 where the plan holds a blocker, 0 otherwise. */
export function exitCodeOf(plan: Plan): ExitCode {
  return plan.findings.some((finding) => finding.severity === "blocker") ? 1 : 0;
}
