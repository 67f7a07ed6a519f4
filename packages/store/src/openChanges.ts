import { EventEmitter } from "node:events";
import type { Change, Changes } from "./Changes";
import type { Database } from "./database/Database";
import type { ChangeKind, StoreParts } from "./StoreParts";

const AT_MOST = 500;
/** Older ones are forgotten: whoever was away longer reads the whole list again. */
const KEPT = 10_000;
const FORGET_EVERY = 100;

interface OpenChanges {
  readonly changes: Changes;
  readonly write: StoreParts["write"];
}

/** The numbered changes, and the one way to write, which numbers them. */
export async function openChanges(database: Database, now: () => Date): Promise<OpenChanges> {
  const heard = new EventEmitter().setMaxListeners(0);
  const { db } = database;
  const changes: Changes = {
    async last() {
      const row = await db
        .selectFrom("changes")
        .select((is) => is.fn.max("seq").as("seq"))
        .executeTakeFirst();
      return row?.seq ?? 0;
    },
    after: async (seq) =>
      (
        await db
          .selectFrom("changes")
          .select(["seq", "kind", "board_id as boardId", "item", "revision", "at", "device"])
          .where("seq", ">", seq)
          .orderBy("seq")
          .limit(AT_MOST)
          .execute()
      ).map((row): Change => ({ ...row, kind: row.kind as ChangeKind })),
    watch(call) {
      heard.on("change", call);
      return () => void heard.off("change", call);
    },
  };
  const write: StoreParts["write"] = async (device, work) => {
    const at = now().toISOString();
    const result = await database.write((tx) =>
      work({
        tx,
        at,
        device,
        async note({ kind, boardId, item, revision }) {
          const last = await tx
            .selectFrom("changes")
            .select((is) => is.fn.max("seq").as("seq"))
            .executeTakeFirst();
          const seq = (last?.seq ?? 0) + 1;
          const row = { kind, board_id: boardId ?? null, item: item ?? null, revision: revision ?? null };
          await tx
            .insertInto("changes")
            .values({ seq, ...row, at, device })
            .execute();
          if (seq % FORGET_EVERY === 0)
            await tx
              .deleteFrom("changes")
              .where("seq", "<=", seq - KEPT)
              .execute();
        },
      }),
    );
    heard.emit("change");
    return result;
  };
  await database.listen(() => void heard.emit("change"));
  return { changes, write };
}
