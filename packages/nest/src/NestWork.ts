import type { NestLay, NestOrder, NestProgress, NestSearch } from "./NestOrder";
import { searchNest } from "./searchNest";

/** What a worker is asked: one roll to lay out. */
export interface NestTask {
  readonly order: NestOrder;
  readonly search: NestSearch;
}

/** What it answers, in order: progress, and at the end the lay. To stop it, end the worker; the last progress has the best so far. */
export type NestAnswer =
  | { readonly kind: "progress"; readonly progress: NestProgress }
  | { readonly kind: "done"; readonly lay: NestLay };

/** The whole of a worker's work, the same behind Node's threads and the browser's. */
export function answerNest({ order, search }: NestTask, answer: (said: NestAnswer) => void): void {
  const running = searchNest(order, search);
  for (let step = running.next(); ; step = running.next()) {
    if (step.done) {
      answer({ kind: "done", lay: step.value });
      return;
    }
    answer({ kind: "progress", progress: step.value });
  }
}
