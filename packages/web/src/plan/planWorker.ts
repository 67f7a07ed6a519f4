import { type Answer, type Asked, answerAsked, type PlanFailed } from "./answerPlan";

/** Plans off the page's own thread; one asking, one answer, in their order. */
self.addEventListener("message", ({ data }: MessageEvent<Asked>) => {
  self.postMessage(answerOr(data));
});

function answerOr(asked: Asked): Answer | PlanFailed {
  try {
    return answerAsked(asked);
  } catch (error) {
    return { why: String(error) };
  }
}
