import { parentPort, workerData } from "node:worker_threads";
import { makeSheet } from "./makeSheet";
import type { SheetTask } from "./SheetTask";

/** A thread of its own, so that nobody waits for a PDF but who asked for it. */
parentPort?.postMessage(await makeSheet(workerData as SheetTask));
