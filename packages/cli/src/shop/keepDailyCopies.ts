import type { Shop } from "@lapline/store";
import { reasonOf } from "../reasonOf";
import type { Terminal } from "../Terminal";

const HOUR_MS = 3_600_000;
const KEPT = 14;

/** Makes each day's copy in the shop's folder: now where it is missing, and in the first hour of each day. Gives what ends it, after the copy being made. */
export function keepDailyCopies(shop: Shop, folder: string, terminal: Terminal): () => Promise<void> {
  const makeIt = async () => {
    try {
      const { keepDailyCopy } = await import("@lapline/store");
      await keepDailyCopy(shop, { folder, day: dayOf(terminal.now()), kept: KEPT });
    } catch (error) {
      terminal.tell(`Today's copy of the shop was not made: ${reasonOf(error)}.`);
    }
  };
  let running = makeIt();
  const timer = setInterval(() => {
    running = running.then(makeIt);
  }, HOUR_MS);
  timer.unref();
  return () => {
    clearInterval(timer);
    return running;
  };
}

/** By the clock on the wall. */
function dayOf(now: Date): string {
  const two = (number: number) => String(number).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
