import { sql } from "kysely";
import type { Migration } from "./Migration";

/** The tables as they first were. Text compares by its bytes on both databases, so that lists come in one order. */
export const first: Migration = {
  version: 1,
  async up(tx, kind) {
    const text = sql.raw(kind === "postgres" ? 'text collate "C"' : "text");
    const board = sql`board_id ${text} not null references boards (id)`;
    const who = sql`device ${text} not null`;
    for (const statement of [
      sql`create table boards (id ${text} primary key, version integer not null, revision ${text} not null,
        summary ${text} not null)`,
      sql`create table board_versions (${board}, version integer not null, revision ${text} not null, text ${text} not null,
        saved_at ${text} not null, ${who}, engine ${text} not null, primary key (board_id, version))`,
      sql`create index board_versions_by_revision on board_versions (board_id, revision)`,
      sql`create table journal_entries (${board}, id ${text} not null, place integer not null, entry ${text} not null,
        received_at ${text} not null, ${who}, primary key (board_id, id), unique (board_id, place))`,
      sql`create table shelf_versions (shelf ${text} not null, id ${text} not null, version integer not null,
        revision ${text} not null, text ${text} not null, saved_at ${text} not null, ${who}, primary key (shelf, id, version))`,
      sql`create table photos (${board}, hash ${text} not null, type ${text} not null, size_bytes integer not null,
        kept_at ${text} not null, ${who}, primary key (board_id, hash))`,
      sql`create table sheets (${board}, id ${text} not null, board_version integer not null, plan_hash ${text} not null,
        pdf_hash ${text} not null, issued_at ${text} not null, ${who}, engine ${text} not null, primary key (board_id, id))`,
      sql`create table changes (seq integer primary key, kind ${text} not null, board_id ${text}, item ${text},
        revision ${text}, at ${text} not null, ${who})`,
    ])
      await statement.execute(tx);
  },
};
