import { say } from "../../foundation/phrase";
import { mass } from "../../foundation/quantity";
import { quoteText } from "../../foundation/quoteText";
import { type Finding, finding } from "../../foundation/stage";
import { standingEntries } from "../../foundation/standingEntries";
import type { WeighinBasis, WeighinBoard, WeighinEntry } from "./WeighinBoard";

/** One reading of the scale at its place in the work. */
export interface Weighing {
  readonly id: string;
  readonly after: string;
  /** Of the step in the order of the work; -1 for the shaped blank. */
  readonly at: number;
  readonly massKg: number;
}

type Weighed = Extract<WeighinEntry, { kind: "weighed" }>;

/**
 * The readings of the scale in the order of the work, one a step: of two after the same step the later counts. What cannot be placed
 * or is no mass is left out, with a finding.
 */
export function readWeighings(
  { blank, record }: WeighinBoard,
  steps: NonNullable<WeighinBasis["steps"]>,
): { readonly weighings: readonly Weighing[]; readonly findings: readonly Finding[] } {
  const standing = standingEntries(record ?? []);
  const weighed = standing.filter((entry): entry is Weighed => entry.kind === "weighed");
  const placeOf = new Map(steps.map(({ id }, i) => [id, i]));
  const findings: Finding[] = [];
  const byPlace = new Map<number, Weighing>();
  if (blank?.shapedMassKg !== undefined && blank.shapedMassKg > 0) {
    byPlace.set(-1, { id: "blank", after: "blank", at: -1, massKg: blank.shapedMassKg });
  }
  for (const entry of weighed) {
    const { id, after, massKg } = entry;
    const named = placeOf.get(after);
    const at = named === undefined ? undefined : passDone(steps, named, doneBefore(standing, entry));
    if (at === undefined) findings.push(unknownStep(id, after));
    else if (!(massKg > 0 && Number.isFinite(massKg))) findings.push(noMass(id));
    else {
      const earlier = byPlace.get(at);
      if (earlier !== undefined) findings.push(twice(id, after, earlier.massKg));
      byPlace.set(at, { id, after, at, massKg });
    }
  }
  return { weighings: [...byPlace.values()].sort((a, b) => a.at - b.at), findings };
}

function doneBefore(standing: readonly WeighinEntry[], entry: WeighinEntry): ReadonlySet<string> {
  const before = standing.slice(0, standing.indexOf(entry));
  return new Set(before.flatMap((each) => (each.kind === "done" ? each.step : [])));
}

/** A weighing after a coat stands behind the work on it that the record has before: trimmed, then weighed. */
function passDone(
  steps: NonNullable<WeighinBasis["steps"]>,
  named: number,
  done: ReadonlySet<string>,
): number {
  let at = named;
  for (let next = steps[at + 1]; next !== undefined && next.coat === null && done.has(next.id); ) {
    at += 1;
    next = steps[at + 1];
  }
  return at;
}

function unknownStep(id: string, after: string): Finding {
  const says = say`the weighing ${quoteText(id)} stands after ${quoteText(after)}, and this board has no such step: it is left out`;
  return finding("warning", "weighins.unknown-step", `record[${id}].after`, says);
}

function noMass(id: string): Finding {
  const says = say`the weighing ${quoteText(id)} is no mass above nought: it is left out`;
  return finding("warning", "weighins.no-mass", `record[${id}].mass`, says);
}

function twice(id: string, after: string, earlierKg: number): Finding {
  const says = say`weighed twice after ${after}: the later counts, not ${mass(earlierKg)}`;
  return finding("note", "weighins.twice", `record[${id}]`, says);
}
