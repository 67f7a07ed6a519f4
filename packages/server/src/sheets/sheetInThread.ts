import { Worker } from "node:worker_threads";
import type { SheetMade, SheetTask } from "./SheetTask";

/** Beside the built command; from the sources it is the one that was built last. */
const WORKER = new URL("../../../cli/dist/sheetWorker.js", import.meta.url);
const BESIDE = new URL("./sheetWorker.js", import.meta.url);
/** More would wait so long that they ask again. */
const MOST_WAITING = 10;

/** Makes one Sheet after the other, each in a thread; null where too many are waiting. */
export function openSheetThread(): (task: SheetTask) => Promise<SheetMade | null> {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return async (task) => {
    if (waiting >= MOST_WAITING) return null;
    waiting++;
    const made = last.then(() => makeInThread(task));
    last = made.catch(() => undefined);
    return made.finally(() => waiting--);
  };
}

function makeInThread(task: SheetTask): Promise<SheetMade> {
  const worker = new Worker(import.meta.url.includes("/dist/") ? BESIDE : WORKER, { workerData: task });
  return new Promise<SheetMade>((resolve, reject) => {
    worker.on("message", resolve);
    worker.on("error", reject);
    worker.on("exit", () => reject(new Error("the thread ended without a Sheet")));
  }).finally(() => worker.terminate());
}
