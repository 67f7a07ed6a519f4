import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellText } from "../language/tellText";

type Steps = NonNullable<Plan["steps"]>;

export interface StepCautions {
  /** Holds for every step. */
  readonly always: readonly string[];
  /** In the order of the steps. */
  readonly steps: readonly CautionsHere[];
}

export interface CautionsHere {
  /** Said in full, because it comes up here for the first time. */
  readonly full: readonly string[];
  /** Said in full at an earlier step: its harm, that step's number from one, and the plan's own text. */
  readonly again: ReadonlyArray<{ readonly harm: string; readonly step: number; readonly caution: string }>;
}

/**
 * The cautions of the steps so that they are read: each in full where it first matters, and by its harm at every later
 * step, with the step that has the whole of it. What is done needs none. A caution reads "harm: what to do".
 */
export function stepCautions(steps: Steps, reader: Reader): StepCautions {
  const shared = steps[0]?.cautions.filter((caution) =>
    steps.every((step) => step.cautions.includes(caution)),
  );
  const always = steps.length > 1 ? (shared ?? []) : [];
  const firstAt = new Map<string, number>();
  const here = steps.map((step, i): CautionsHere => {
    if (step.done) return { full: [], again: [] };
    const own = step.cautions.filter((caution) => !always.includes(caution));
    const again = own.flatMap((caution) => {
      const first = firstAt.get(caution);
      return first === undefined
        ? []
        : [{ harm: cautionHarm(tellText(caution, reader)), step: first, caution }];
    });
    const full = own.filter((caution) => !firstAt.has(caution));
    for (const caution of full) firstAt.set(caution, i + 1);
    return { full: full.map((caution) => tellText(caution, reader)), again };
  });
  return { always: always.map((caution) => tellText(caution, reader)), steps: here };
}

/** What a caution warns of, without what to do about it. */
export function cautionHarm(caution: string): string {
  return caution.split(/[:.]/)[0] ?? caution;
}
