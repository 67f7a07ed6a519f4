import { ArchiveRefusedError } from "./ArchiveRefusedError";

/** A board file of the largest size, all of it escaped, has fewer characters. */
const LONGEST_LINE = 16_000_000;

/** The lines of a text in UTF-8, never more than one of them in memory. */
export async function* splitLines(parts: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let rest = "";
  for await (const part of parts) {
    const lines = (rest + decode(decoder, part)).split("\n");
    rest = lines.pop() ?? "";
    if (rest.length > LONGEST_LINE) throw new ArchiveRefusedError("a line of it is too long");
    yield* lines;
  }
  rest += decode(decoder);
  if (rest !== "") yield rest;
}

function decode(decoder: TextDecoder, part?: Uint8Array): string {
  try {
    return part === undefined ? decoder.decode() : decoder.decode(part, { stream: true });
  } catch {
    throw new ArchiveRefusedError("it is no text");
  }
}
