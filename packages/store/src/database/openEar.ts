import type { Pool, PoolClient } from "pg";

export const CHANGES_CHANNEL = "lapline_changes";
const AGAIN_MS = 1000;

interface Ear {
  /** Resolves once it listens. */
  listen(heard: () => void): Promise<void>;
  close(): void;
}

/**
 * Listens for the writes of other programs on one connection of the pool, and on another one when that is lost. What was told in
 * between is not missed: whoever hears looks for what came after the last number that they know, and is called after each new start.
 */
export function openEar(pool: Pool, report: (message: string) => void): Ear {
  let client: PoolClient | null = null;
  let timer: NodeJS.Timeout | null = null;
  let isClosed = false;

  async function start(heard: () => void): Promise<void> {
    const own = await pool.connect();
    if (isClosed) return own.release(true);
    client = own;
    const lose = () => {
      if (client !== own) return;
      client = null;
      own.release(true);
      again(heard);
    };
    own.on("notification", heard);
    own.once("end", lose);
    await own.query(`listen ${CHANGES_CHANNEL}`).catch(lose);
  }

  function again(heard: () => void): void {
    if (isClosed) return;
    timer = setTimeout(() => {
      start(heard).then(
        () => {
          if (client === null) return;
          report("PostgreSQL is heard again.");
          heard();
        },
        () => again(heard),
      );
    }, AGAIN_MS);
    timer.unref();
  }

  return {
    listen: start,
    close() {
      isClosed = true;
      if (timer !== null) clearTimeout(timer);
      const own = client;
      client = null;
      own?.release(true);
    },
  };
}
