import { type Phrase, type Plan, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";

type Step = NonNullable<Plan["steps"]>[number];
type Until = Step["needs"][number]["until"];

export interface StepWait {
  /** What may be done then: `flip after`. */
  readonly words: string;
  readonly waitS: number;
  /** Where it stands in the plan. */
  readonly path: string;
}

const WORDS: Readonly<Record<Exclude<Until, "hands-off">, Phrase>> = {
  dry: say`dry after`,
  trim: say`trim after`,
  flip: say`flip after`,
  recoat: say`recoat after`,
  sandable: say`sand after`,
};

/**
 * What the later steps wait for after this one, soonest first: each stage that its coat must reach, once, with the time
 * from the hands being off. A step that nobody waits for by a stage, but that is itself a wait, gives that.
 */
export function stepWaits(steps: readonly Step[], step: Step, reader: Reader): readonly StepWait[] {
  const needs = steps.flatMap((later) =>
    later.needs.flatMap((need) =>
      need.step === step.id && need.waitS !== null
        ? [{ until: need.until, waitS: need.waitS, path: `steps[${later.id}].needs[${step.id}].waitS` }]
        : [],
    ),
  );
  const waits = (Object.keys(WORDS) as Array<keyof typeof WORDS>).flatMap((until): StepWait[] => {
    const [longest] = needs.filter((need) => need.until === until).toSorted((a, b) => b.waitS - a.waitS);
    if (longest === undefined || longest.waitS <= 0) return [];
    const { waitS, path } = longest;
    return [{ words: tellPhrase(WORDS[until], reader), waitS, path }];
  });
  if (waits.length > 0) return waits.toSorted((a, b) => a.waitS - b.waitS);
  return step.waitS !== null && step.waitS > 0
    ? [{ words: tellPhrase(say`then wait`, reader), waitS: step.waitS, path: `steps[${step.id}].waitS` }]
    : [];
}
