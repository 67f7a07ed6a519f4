import type { BoardFile } from "@lapline/contract";

/** One step back or forward: the whole file before and after it, which share all that it left alone. */
interface Step {
  readonly before: BoardFile;
  readonly after: BoardFile;
  /** The field that is being typed; null once the step is ended. */
  readonly typing: string | null;
  /** The id of the entry that it put into the record, which is never erased. */
  readonly wrote: string | null;
}

export interface History {
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

export const NO_HISTORY: History = { past: [], future: [] };

/** More than anybody goes back by hand. */
const MOST_STEPS = 200;

/** One more step done; typing on in the field of the last one is the same step. */
export function addStep({ past }: History, step: Step): History {
  const last = past.at(-1);
  const goesOn = last !== undefined && step.typing !== null && step.typing === last.typing;
  return goesOn
    ? { past: [...past.slice(0, -1), { ...last, after: step.after }], future: [] }
    : { past: [...past, step].slice(-MOST_STEPS), future: [] };
}

/** What is typed next is a step of its own. */
export function endStep(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined || last.typing === null) return history;
  return { ...history, past: [...history.past.slice(0, -1), { ...last, typing: null }] };
}
