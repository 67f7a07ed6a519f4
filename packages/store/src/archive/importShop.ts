import { createHash } from "node:crypto";
import { sql } from "kysely";
import type { Bytes, ContentStore } from "../content/ContentStore";
import type { Tx } from "../database/Database";
import type { StoreParts } from "../StoreParts";
import { ArchiveRefusedError } from "./ArchiveRefusedError";
import { contentsOfCopy } from "./contentsOfCopy";
import { emptyShop } from "./emptyShop";
import { ARCHIVE_FORMAT, CONTENT } from "./exportShop";
import { splitLines } from "./splitLines";
import { takeRow } from "./takeRow";

export interface ImportParts {
  readonly schema: number;
  readonly contents: ContentStore;
  readonly write: StoreParts["write"];
  /** Opens a file that a copy without contents left beside it. */
  readonly beside: (hash: string) => Promise<Bytes>;
}

/**
 * Takes a copy of a shop, line by line, into a shop that holds nothing of its own: all of it, in one transaction, or nothing.
 * @throws ArchiveRefusedError where it is no copy, was cut off or altered, is of a later version, or the shop is not empty
 */
export async function importShop(
  copy: AsyncIterable<Uint8Array>,
  { schema, contents, write, beside }: ImportParts,
): Promise<void> {
  await write("copy of a shop", async ({ tx, note }) => {
    await emptyShop(tx);
    const files = contentsOfCopy(contents);
    const hash = createHash("sha256");
    let head: Head | null = null;
    let [rows, isWhole] = [0, false];
    for await (const line of splitLines(copy)) {
      if (isWhole) throw new ArchiveRefusedError("there is more behind its end");
      const value = parseLine(line);
      if (head === null) head = readHead(value, schema);
      else if (Array.isArray(value)) {
        rows++;
        if (value[0] === CONTENT) await files.takePart(value);
        else files.need(await takeRow(tx, value, head.schema));
      } else {
        checkEnd(value, rows, hash.digest("hex"));
        isWhole = true;
        continue;
      }
      hash.update(`${line}\n`);
    }
    if (!isWhole) throw new ArchiveRefusedError("it is cut off: its last line is missing");
    await checkNewest(tx);
    await files.finish(head?.contents === false ? beside : null);
    await note({ kind: "shop" });
  });
}

function parseLine(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw new ArchiveRefusedError("a line of it is not JSON");
  }
}

interface Head {
  readonly schema: number;
  readonly contents: boolean;
}

function readHead(value: unknown, known: number): Head {
  const head = fieldsOf(value);
  if (head.format !== ARCHIVE_FORMAT) throw new ArchiveRefusedError("it is no copy of a shop");
  const { schema } = head;
  if (typeof schema !== "number" || !Number.isInteger(schema) || schema < 1 || schema > known)
    throw new ArchiveRefusedError(
      `its tables are of version ${String(schema)}; ${known} and older are read here`,
    );
  return { schema, contents: head.contents !== false };
}

function checkEnd(value: unknown, rows: number, sha256: string): void {
  const end = fieldsOf(value);
  if (end.end !== rows || end.sha256 !== sha256)
    throw new ArchiveRefusedError("it was cut short or altered: its end does not fit the rest");
}

function fieldsOf(value: unknown): Readonly<Record<string, unknown>> {
  return (typeof value === "object" && value !== null ? value : {}) as Record<string, unknown>;
}

/** Each board's newest version must be the one that the list shows. */
async function checkNewest(tx: Tx): Promise<void> {
  const { rows } =
    await sql`select boards.id from boards left join board_versions on board_versions.board_id = boards.id
    and board_versions.version = boards.version and board_versions.revision = boards.revision
    where board_versions.board_id is null`.execute(tx);
  if (rows.length > 0) throw new ArchiveRefusedError("a board's newest version is missing");
}
