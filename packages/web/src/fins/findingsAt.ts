import type { Finding, Plan } from "@lapline/engine";
import { sortFindings } from "@lapline/present";

/** What was found at a place of the board file or the plan, or inside it, blockers first. */
export function findingsAt(plan: Plan, place: string): readonly Finding[] {
  return sortFindings(plan.findings.filter(({ path }) => isWithin(path, place)));
}

export function isWithin(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`);
}

export interface NumberedFinding {
  readonly finding: Finding;
  /** As it stands on the drawing. */
  readonly number: number;
  readonly fin: string;
}

/** What was found at the fins of the set, numbered through in their order, so that a drawing can point to it. */
export function numberFindings(
  plan: Plan,
  set: ReadonlyArray<{ readonly fin: string }>,
): readonly NumberedFinding[] {
  return set
    .flatMap(({ fin }, i) => findingsAt(plan, `fins.set[${i}]`).map((finding) => ({ finding, fin })))
    .map((each, i) => ({ ...each, number: i + 1 }));
}

/** The numbers at each fin, as a drawing writes them on tape. */
export function flagsOf(numbered: readonly NumberedFinding[]): ReadonlyMap<string, string> {
  const flags = new Map<string, string>();
  for (const { fin, number } of numbered) {
    const before = flags.get(fin);
    flags.set(fin, before === undefined ? String(number) : `${before}, ${number}`);
  }
  return flags;
}
