const waiting = new Set<() => void>();
let isRunning = false;

/**
 * Runs work that a key may come before: one piece at a time, each in a slice of its own, so that a key never waits for more than one
 * of them. Gives what takes it out of the row.
 */
export function takeTurn(run: () => void): () => void {
  waiting.add(run);
  if (!isRunning) {
    isRunning = true;
    setTimeout(runNext, 0);
  }
  return () => void waiting.delete(run);
}

function runNext(): void {
  const [next] = waiting;
  isRunning = next !== undefined;
  if (next === undefined) return;
  waiting.delete(next);
  // The rest goes on even if this one throws.
  setTimeout(runNext, 0);
  next();
}
