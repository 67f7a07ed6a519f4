import type { Answer, PlanFailed } from "./answerPlan";
import { openPlanner, type PlanThread } from "./openPlanner";

/** This tab's own; its script is fetched beside the page's. */
export const planner = openPlanner(openWorker);

function openWorker(): PlanThread {
  const worker = new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module" });
  return {
    ask: (asked) => worker.postMessage(asked),
    listen({ answered, lost }) {
      worker.addEventListener("message", ({ data }: MessageEvent<Answer | PlanFailed>) => answered(data));
      // Its script could not be fetched.
      worker.addEventListener("error", lost);
    },
  };
}
