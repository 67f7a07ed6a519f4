import { sql } from "kysely";
import type { Migration } from "./Migration";

/** The devices that are let in over the local network; of a token only its hash. */
export const third: Migration = {
  version: 3,
  async up(tx, kind) {
    const text = sql.raw(kind === "postgres" ? 'text collate "C"' : "text");
    await sql`create table devices (id ${text} primary key, name ${text} not null, name_key ${text} not null unique,
      role ${text} not null, token_hash ${text} not null unique, paired_at ${text} not null, seen_at ${text} not null,
      expires_at ${text} not null, revoked_at ${text}, revoked_by ${text})`.execute(tx);
  },
};
