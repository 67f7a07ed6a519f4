import type { ContentStore } from "../content/ContentStore";
import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import type { SheetStore } from "./SheetStore";

/** The Sheets that were issued, on either database; their plans and PDFs are files by content. */
export function openSheets({ database: { db }, contents, engine, write }: StoreParts): SheetStore {
  return {
    read: async (boardId, id) =>
      (await sheetsOf(db, boardId).where("id", "=", id).executeTakeFirst()) ?? null,
    list: async (boardId) =>
      [...(await sheetsOf(db, boardId).execute())].sort((a, b) => Number(b.id) - Number(a.id)),
    async issue({ boardId, boardVersion, plan, pdf, device }) {
      const [planHash, pdfHash] = [await keep(contents, plan), await keep(contents, pdf)];
      return write(device, async ({ tx, at, note }) => {
        const version = await tx
          .selectFrom("board_versions")
          .select("version")
          .where("board_id", "=", boardId)
          .where("version", "=", boardVersion)
          .executeTakeFirst();
        if (version === undefined) return { kind: "no-board" };
        const there = await sheetsOf(tx, boardId).execute();
        const same = there.find((sheet) => sheet.planHash === planHash && sheet.pdfHash === pdfHash);
        if (same !== undefined) return { kind: "issued", sheet: same, isNew: false };
        const id = String(1 + Math.max(0, ...there.map((sheet) => Number(sheet.id))));
        await tx
          .insertInto("sheets")
          .values({
            board_id: boardId,
            id,
            board_version: boardVersion,
            plan_hash: planHash,
            pdf_hash: pdfHash,
            issued_at: at,
            device,
            engine,
          })
          .execute();
        await note({ kind: "sheet", boardId, item: id });
        const sheet = { id, boardVersion, planHash, pdfHash, issuedAt: at, device, engine };
        return { kind: "issued", sheet, isNew: true };
      });
    },
    open: ({ pdfHash, planHash }, file) => contents.open(file === "pdf" ? pdfHash : planHash),
  };
}

async function keep(contents: ContentStore, bytes: Uint8Array): Promise<string> {
  const taken = await contents.take([bytes], { mostBytes: Number.MAX_SAFE_INTEGER, accepts: () => true });
  if (taken.kind !== "kept") throw new Error("what is made here is taken whatever its size");
  return taken.content.hash;
}

function sheetsOf(db: Tx, boardId: string) {
  return db
    .selectFrom("sheets")
    .select([
      "id",
      "board_version as boardVersion",
      "plan_hash as planHash",
      "pdf_hash as pdfHash",
      "issued_at as issuedAt",
      "device",
      "engine",
    ])
    .where("board_id", "=", boardId);
}
