import { sql } from "kysely";
import type { Migration } from "./Migration";

/** A board can be put away: it leaves the Shed, and nothing of it is erased. */
export const second: Migration = {
  version: 2,
  async up(tx, kind) {
    const text = sql.raw(kind === "postgres" ? 'text collate "C"' : "text");
    await sql`alter table boards add column put_away_at ${text}`.execute(tx);
  },
};
