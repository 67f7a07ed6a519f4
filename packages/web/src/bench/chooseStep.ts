import type { BenchStep } from "./listCards";

export interface ChosenStep {
  readonly step: BenchStep;
  /** From one. */
  readonly number: number;
  readonly before: BenchStep | null;
  readonly after: BenchStep | null;
}

/** The step by its id, or else the first that is not done, and the last where all are. */
export function chooseStep(steps: readonly BenchStep[], id: string | undefined): ChosenStep | null {
  const named = steps.findIndex((step) => step.id === id);
  const open = steps.findIndex(({ done }) => !done);
  const at = named !== -1 ? named : open !== -1 ? open : steps.length - 1;
  const step = steps[at];
  if (step === undefined) return null;
  return { step, number: at + 1, before: steps[at - 1] ?? null, after: steps[at + 1] ?? null };
}
