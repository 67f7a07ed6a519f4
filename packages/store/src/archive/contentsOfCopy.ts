import type { Bytes, ContentStore } from "../content/ContentStore";
import { LARGEST_PHOTO_BYTES } from "../photos/PhotoStore";
import { photoTypeOf } from "../photos/photoTypeOf";
import { ArchiveRefusedError } from "./ArchiveRefusedError";
import type { TakenRow } from "./takeRow";

interface ContentsOfCopy {
  /** Remembers which files a row names, and what they have to be. */
  need(taken: TakenRow): void;
  /** One part of a file, as a line of the copy holds it. */
  takePart(values: readonly unknown[]): Promise<void>;
  /** The last file is whole, and none is missing; those that lie beside the copy are taken from there. */
  finish(beside: ((hash: string) => Promise<Bytes>) | null): Promise<void>;
}

/** The files of a copy: each has to be named by a row before, to be of its type, and to be the bytes that its name says. */
export function contentsOfCopy(contents: ContentStore): ContentsOfCopy {
  const needed = new Map<string, (head: Uint8Array) => boolean>();
  let open: { readonly hash: string; readonly parts: Buffer[]; bytes: number } | null = null;
  /** One file may stand in several rows: it has to be what each of them says. */
  const name = (hash: string, accepts: (head: Uint8Array) => boolean) => {
    const others = needed.get(hash);
    needed.set(hash, (head) => accepts(head) && (others?.(head) ?? true));
  };
  const keep = async (hash: string, parts: Bytes) => {
    const accepts = needed.get(hash);
    if (accepts === undefined) throw new ArchiveRefusedError("a file of it belongs to no row");
    const taken = await contents.take(parts, { mostBytes: LARGEST_PHOTO_BYTES, accepts });
    if (taken.kind !== "kept" || taken.content.hash !== hash)
      throw new ArchiveRefusedError("a file of it is not what its row says");
    needed.delete(hash);
  };
  const close = async () => {
    const last = open;
    open = null;
    if (last !== null) await keep(last.hash, last.parts);
  };
  return {
    need({ table: { table }, row }) {
      if (table === "photos") name(String(row.hash), (head) => photoTypeOf(head) === row.type);
      if (table !== "sheets") return;
      name(String(row.plan_hash), (head) => startsWith(head, "{"));
      name(String(row.pdf_hash), (head) => startsWith(head, "%PDF-"));
    },
    async takePart([, hash, text]) {
      if (typeof hash !== "string" || typeof text !== "string")
        throw new ArchiveRefusedError("a part of a file is of no known form");
      if (open?.hash !== hash) {
        await close();
        if (!needed.has(hash)) throw new ArchiveRefusedError("a file of it belongs to no row");
        open = { hash, parts: [], bytes: 0 };
      }
      const part = Buffer.from(text, "base64");
      open.bytes += part.byteLength;
      if (open.bytes > LARGEST_PHOTO_BYTES) throw new ArchiveRefusedError("a file of it is too large");
      open.parts.push(part);
    },
    async finish(beside) {
      await close();
      if (beside !== null) for (const hash of [...needed.keys()]) await keep(hash, await beside(hash));
      if (needed.size > 0) throw new ArchiveRefusedError(`${needed.size} of its files are missing`);
    },
  };
}

const startsWith = (head: Uint8Array, word: string) =>
  Buffer.from(head).subarray(0, word.length).equals(Buffer.from(word));
