import { Worker } from "node:worker_threads";
import type { NestAnswer, NestLay, NestProgress, NestTask } from "@lapline/nest";

/** Beside the built command; from the sources it is the one that was built last. */
const WORKER = new URL("../../dist/nestWorker.js", import.meta.url);
const BESIDE = new URL("./nestWorker.js", import.meta.url);

/** Runs the search in a thread of its own, telling of progress. @throws Error what the thread threw */
export function nestInThread(task: NestTask, tell: (progress: NestProgress) => void): Promise<NestLay> {
  const worker = new Worker(import.meta.url.includes("/dist/") ? BESIDE : WORKER, { workerData: task });
  return new Promise<NestLay>((resolve, reject) => {
    worker.on("message", (said: NestAnswer) => {
      if (said.kind === "progress") tell(said.progress);
      else resolve(said.lay);
    });
    worker.on("error", reject);
    worker.on("exit", () => reject(new Error("the search ended without a lay")));
  }).finally(() => worker.terminate());
}
