import type { Shop } from "@lapline/store";

/**
 * The list of boards as JSON, put together anew only after something was kept: with thousands of boards that is most of the work,
 * and the number of the last change tells, whichever program made it.
 */
export function keepList({ boards, changes }: Shop): () => Promise<Uint8Array<ArrayBuffer>> {
  let made: { readonly seq: number; readonly bytes: Uint8Array<ArrayBuffer> } | null = null;
  return async () => {
    // Asked first: a list that is newer than its number is only made once more.
    const seq = await changes.last();
    if (made?.seq !== seq) {
      const text = `{"boards":[${(await boards.listSummaries()).join(",")}]}`;
      made = { seq, bytes: new Uint8Array(Buffer.from(text, "utf8")) };
    }
    return made.bytes;
  };
}
