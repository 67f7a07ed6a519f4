import type { Finding, Severity } from "@lapline/engine";

const RANK: Readonly<Record<Severity, number>> = { blocker: 0, warning: 1, note: 2 };

/** Blockers first, then warnings, then notes; as found within each. */
export function sortFindings(findings: readonly Finding[]): readonly Finding[] {
  return findings.toSorted((a, b) => RANK[a.severity] - RANK[b.severity]);
}
