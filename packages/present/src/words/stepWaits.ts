import { type Phrase, type Plan, say } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tellPhrase } from "../language/tellPhrase";

type Step = NonNullable<Plan["steps"]>[number];
type Until = Step["needs"][number]["until"];

export interface StepWait {
  /** What may be done then: `flip after`. */
  readonly words: string;
  readonly waitS: number;
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
  const needs = steps.flatMap((later) => later.needs.filter((need) => need.step === step.id));
  const waits = (Object.keys(WORDS) as Array<keyof typeof WORDS>).flatMap((until): StepWait[] => {
    const times = needs.flatMap((need) => (need.until === until && need.waitS !== null ? [need.waitS] : []));
    const waitS = Math.max(0, ...times);
    return waitS > 0 ? [{ words: tellPhrase(WORDS[until], reader), waitS }] : [];
  });
  if (waits.length > 0) return waits.toSorted((a, b) => a.waitS - b.waitS);
  return step.waitS !== null && step.waitS > 0
    ? [{ words: tellPhrase(say`then wait`, reader), waitS: step.waitS }]
    : [];
}
