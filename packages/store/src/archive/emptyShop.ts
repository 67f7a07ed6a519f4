import { sql } from "kysely";
import type { Tx } from "../database/Database";
import { ArchiveRefusedError } from "./ArchiveRefusedError";

/** A shop holds nothing of its own while it has only the boards that it was opened with, as they were. */
export const DEMO_DEVICE = "demo";

/** Makes room for a copy. Throws ArchiveRefusedError where anything was kept here. */
export async function emptyShop(tx: Tx): Promise<void> {
  const own = await sql`
    select 1 from board_versions where device <> ${DEMO_DEVICE} or exists (select 1 from boards where put_away_at is not null)
    union all select 1 from journal_entries union all select 1 from shelf_versions union all select 1 from photos
    union all select 1 from sheets limit 1`.execute(tx);
  if (own.rows.length > 0)
    throw new ArchiveRefusedError(
      "there are boards already: a copy is taken into an empty shop only",
      "not-empty",
    );
  await tx.deleteFrom("board_versions").execute();
  await tx.deleteFrom("boards").execute();
}
