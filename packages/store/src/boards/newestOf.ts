import type { Tx } from "../database/Database";

/** The newest version of a board, put away or not. */
export function newestOf(db: Tx, id: string) {
  return db
    .selectFrom("boards")
    .innerJoin("board_versions as newest", (join) =>
      join.onRef("newest.board_id", "=", "boards.id").onRef("newest.version", "=", "boards.version"),
    )
    .select([
      "boards.id",
      "newest.text",
      "newest.revision",
      "newest.version",
      "newest.saved_at as savedAt",
      "newest.device",
      "newest.engine",
      "boards.put_away_at as putAwayAt",
    ])
    .where("boards.id", "=", id)
    .executeTakeFirst();
}
