import { parentPort, workerData } from "node:worker_threads";
import { answerNest, type NestTask } from "@lapline/nest/work";

/** A thread of its own, so that the command can tell of progress and be stopped. */
answerNest(workerData as NestTask, (said) => parentPort?.postMessage(said));
