import { sql } from "kysely";
import { toldError } from "../StoreUnavailableError";
import type { Database, Tx } from "./Database";

/** Between two statements that open and end a transaction; a failure inside, or of the end, undoes it all. */
export async function runIn<T>(
  db: Database["db"],
  begin: readonly string[],
  work: (tx: Tx) => Promise<T>,
): Promise<T> {
  try {
    return await db.connection().execute(async (tx) => {
      try {
        for (const statement of begin) await sql.raw(statement).execute(tx);
        const result = await work(tx);
        await sql`commit`.execute(tx);
        return result;
      } catch (error) {
        // The database may have undone it by itself, or be gone; the first error is the one to tell.
        await sql`rollback`.execute(tx).catch(() => undefined);
        throw error;
      }
    });
  } catch (error) {
    throw toldError(error);
  }
}
