import { afterPress } from "./afterPress";

/** Short enough that a key does not notice it; what is quick is done together, since each slice may cost a frame. */
const SLICE_MS = 10;

const waiting = new Set<() => void>();
let isRunning = false;

/**
 * Runs work that a key may come before: in slices of time, so that a key never waits for more than one piece of it, and
 * never under a press. Gives what takes it out of the row.
 */
export function takeTurn(run: () => void): () => void {
  waiting.add(run);
  if (!isRunning) {
    isRunning = true;
    afterPress(runSlice);
  }
  return () => void waiting.delete(run);
}

function runSlice(): void {
  const untilMs = performance.now() + SLICE_MS;
  try {
    for (const next of waiting) {
      waiting.delete(next);
      next();
      if (performance.now() >= untilMs) break;
    }
  } finally {
    // The rest goes on even if one of them throws.
    isRunning = waiting.size > 0;
    if (isRunning) afterPress(runSlice);
  }
}
