import { Worker } from "node:worker_threads";
import type { SheetMade, SheetTask } from "./SheetTask";

/** Beside the built command; from the sources it is the one that was built last. */
const WORKER = new URL("../../../cli/dist/sheetWorker.js", import.meta.url);
const BESIDE = new URL("./sheetWorker.js", import.meta.url);
/** More would wait so long that they ask again. */
const MOST_WAITING = 10;
/** Many times as long as the longest Sheet takes on a slow machine: one that takes longer never ends. */
export const LONGEST_SHEET_MS = 120_000;

interface SheetThread {
  readonly made: Promise<SheetMade>;
  end(): Promise<unknown>;
}

/** What making Sheets stands on. */
export interface SheetThreadParts {
  start(task: SheetTask): SheetThread;
  /** Calls back once after so long; gives what ends the wait. */
  after(ms: number, call: () => void): () => void;
}

/** Why there is no Sheet just now: too many are waiting, or this one was given up. */
export type NoSheetNow = { readonly kind: "busy" } | { readonly kind: "too-long" };

/** Makes one Sheet after the other, each in a thread of its own, which is ended where it takes too long, so that the next has its turn. */
export function openSheetThread({ start, after }: SheetThreadParts = IN_THREAD) {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return async (task: SheetTask): Promise<SheetMade | NoSheetNow> => {
    if (waiting >= MOST_WAITING) return { kind: "busy" };
    waiting++;
    const made = last.then(() => makeInTime(task));
    last = made.catch(() => undefined);
    return made.finally(() => waiting--);
  };

  function makeInTime(task: SheetTask): Promise<SheetMade | NoSheetNow> {
    const thread = start(task);
    let isTimed: () => void = () => undefined;
    const late = new Promise<NoSheetNow>((resolve) => {
      isTimed = after(LONGEST_SHEET_MS, () => resolve({ kind: "too-long" }));
    });
    return Promise.race([thread.made, late]).finally(() => {
      isTimed();
      return thread.end();
    });
  }
}

const IN_THREAD: SheetThreadParts = {
  start(task) {
    const worker = new Worker(import.meta.url.includes("/dist/") ? BESIDE : WORKER, { workerData: task });
    const made = new Promise<SheetMade>((resolve, reject) => {
      worker.on("message", resolve);
      worker.on("error", reject);
      worker.on("exit", () => reject(new Error("the thread ended without a Sheet")));
    });
    // Where it is ended for its time nobody waits for it any more.
    made.catch(() => undefined);
    return { made, end: () => worker.terminate() };
  },
  after(ms, call) {
    const timer = setTimeout(call, ms);
    return () => clearTimeout(timer);
  },
};
