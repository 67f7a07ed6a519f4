import { sql } from "kysely";
import { toldError } from "../StoreUnavailableError";
import type { Database, Tx } from "./Database";

interface Waiting {
  readonly work: (tx: Tx) => Promise<unknown>;
  readonly resolve: (result: never) => void;
  readonly reject: (error: unknown) => void;
}

interface Done {
  readonly tell: () => void;
}

/** So that a long queue is not one long transaction. */
const MOST_AT_ONCE = 64;
/** After a transaction the next waits so many times as long as it took, so that a slow disk gathers more writes into one. */
const WAIT_FACTOR = 2;
const LONGEST_WAIT_MS = 15;

/**
 * One writer after the other, in the order in which they came; those that wait at the same moment share one transaction, and with it
 * one flush to the disk, which takes far longer than their work. Each stands behind a savepoint: one that fails undoes only itself. None
 * is told anything before the transaction has landed.
 */
export function groupWrites(
  transact: (work: (tx: Tx) => Promise<readonly Done[]>) => Promise<readonly Done[]>,
): Database["write"] {
  const waiting: Waiting[] = [];
  let isRunning = false;
  let freeAtMs = 0;

  async function runAll(): Promise<void> {
    while (waiting.length > 0) {
      const beganMs = performance.now();
      if (beganMs < freeAtMs) {
        await new Promise((resolve) => setTimeout(resolve, freeAtMs - beganMs));
        continue;
      }
      const group = waiting.splice(0, MOST_AT_ONCE);
      try {
        const done = await transact((tx) => workThrough(tx, group));
        for (const { tell } of done) tell();
      } catch (error) {
        for (const { reject } of group) reject(error);
      }
      const endedMs = performance.now();
      freeAtMs = endedMs + Math.min(LONGEST_WAIT_MS, WAIT_FACTOR * (endedMs - beganMs));
    }
    isRunning = false;
  }

  return <T>(work: (tx: Tx) => Promise<T>) =>
    new Promise<T>((resolve, reject) => {
      waiting.push({ work, resolve, reject });
      if (isRunning) return;
      isRunning = true;
      // After all that has arrived by now was heard.
      setImmediate(() => void runAll());
    });
}

async function workThrough(tx: Tx, group: readonly Waiting[]): Promise<readonly Done[]> {
  const [only] = group;
  if (only !== undefined && group.length === 1) {
    const result = await only.work(tx);
    return [{ tell: () => only.resolve(result as never) }];
  }
  const done: Done[] = [];
  for (const { work, resolve, reject } of group) {
    await sql`savepoint one`.execute(tx);
    try {
      const result = await work(tx);
      done.push({ tell: () => resolve(result as never) });
    } catch (error) {
      // Where this fails too, the database is gone or has undone the whole by itself: then all of them fail.
      await sql`rollback to savepoint one`.execute(tx).catch(() => {
        throw error;
      });
      done.push({ tell: () => reject(toldError(error)) });
    }
    await sql`release savepoint one`.execute(tx);
  }
  return done;
}
