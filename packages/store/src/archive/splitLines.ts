import { ArchiveRefusedError } from "./ArchiveRefusedError";

/** A board file of the largest size, all of it escaped, has fewer characters. */
const LONGEST_LINE = 16_000_000;

/** The lines of a text in UTF-8, never more than one of them in memory. */
export async function* splitLines(parts: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  // A line's pieces are put together once, at its end, so that a long one that comes in small pieces costs no more than another.
  let pieces: string[] = [];
  let length = 0;
  for await (const part of parts) {
    const [first = "", ...others] = decode(decoder, part).split("\n");
    pieces.push(first);
    length += first.length;
    if (length > LONGEST_LINE) throw new ArchiveRefusedError("a line of it is too long");
    const last = others.pop();
    if (last === undefined) continue;
    yield pieces.join("");
    yield* others;
    pieces = [last];
    length = last.length;
  }
  const rest = pieces.join("") + decode(decoder);
  if (rest !== "") yield rest;
}

function decode(decoder: TextDecoder, part?: Uint8Array): string {
  try {
    return part === undefined ? decoder.decode() : decoder.decode(part, { stream: true });
  } catch {
    throw new ArchiveRefusedError("it is no text");
  }
}
