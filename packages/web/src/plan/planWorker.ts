import { answerPlan, type PlanAnswer, type PlanAsked, type PlanFailed } from "./answerPlan";

/** Plans off the page's own thread; one asking, one answer, in their order. */
self.addEventListener("message", ({ data }: MessageEvent<PlanAsked>) => {
  self.postMessage(answerOr(data));
});

function answerOr(asked: PlanAsked): PlanAnswer | PlanFailed {
  try {
    return answerPlan(asked);
  } catch (error) {
    return { why: String(error) };
  }
}
