import {
  answerAsked,
  type MeshAnswer,
  type MeshAsked,
  type PlanAnswer,
  type PlanAsked,
  type PlanFailed,
} from "./answerPlan";

/** Plans off the page's own thread; one asking, one answer, in their order. */
self.addEventListener("message", ({ data }: MessageEvent<PlanAsked | MeshAsked>) => {
  self.postMessage(answerOr(data));
});

function answerOr(asked: PlanAsked | MeshAsked): PlanAnswer | MeshAnswer | PlanFailed {
  try {
    return answerAsked(asked);
  } catch (error) {
    return { why: String(error) };
  }
}
