import type { SqliteDatabase, SqliteStatement } from "kysely";

const MOST = 200;
/** What changes rows; anything else may change the tables that a statement was prepared for. */
const IS_KEPT = /^(?:select|insert|update|delete|begin|commit|rollback|savepoint|release)\b/i;

/** Prepares each statement once: a write has a dozen of them, and preparing takes longer than running. */
export function keepStatements(file: SqliteDatabase): SqliteDatabase {
  const kept = new Map<string, SqliteStatement>();
  return {
    close: () => file.close(),
    prepare(text) {
      if (!IS_KEPT.test(text)) {
        kept.clear();
        return file.prepare(text);
      }
      const known = kept.get(text);
      if (known !== undefined) return known;
      const made = file.prepare(text);
      if (kept.size >= MOST) kept.clear();
      kept.set(text, made);
      return made;
    },
  };
}
