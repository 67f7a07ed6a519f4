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

/** The numbers at each fin, as a drawing writes them on tape: `1–5, 8`. */
export function flagsOf(numbered: readonly NumberedFinding[]): ReadonlyMap<string, string> {
  const fins = [...new Set(numbered.map(({ fin }) => fin))];
  return new Map(
    fins.map((fin) => [
      fin,
      writeRuns(numbered.filter((each) => each.fin === fin).map(({ number }) => number)),
    ]),
  );
}

/** Ascending numbers, those that follow one another as a run. */
function writeRuns(numbers: readonly number[]): string {
  const runs: Array<{ readonly from: number; to: number }> = [];
  for (const number of numbers) {
    const last = runs.at(-1);
    if (last?.to === number - 1) last.to = number;
    else runs.push({ from: number, to: number });
  }
  return runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(", ");
}
