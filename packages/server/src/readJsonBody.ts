import { LARGEST_BOARD_FILE_BYTES } from "@lapline/contract";
import type { Context } from "hono";
import { refuseEncoded } from "./bodyParts";
import { problem } from "./problem";

const JSON_TYPE = /^application\/(?:[\w.+-]+\+)?json\s*(?:;|$)/i;

/** The body as text, or the answer that says why it was not taken. The JSON itself is read by the contract. */
export async function readJsonBody(context: Context): Promise<string | Response> {
  if (!JSON_TYPE.test(context.req.header("content-type") ?? "")) {
    const detail = "Send a board file with the header content-type: application/json.";
    return problem({ status: 415, title: "Not JSON", detail });
  }
  const encoded = refuseEncoded(context);
  if (encoded !== null) return encoded;
  const bytes = await readUpTo(context.req.raw.body, LARGEST_BOARD_FILE_BYTES);
  if (bytes === null) {
    const detail = `A board file has at most ${LARGEST_BOARD_FILE_BYTES / 1e6} MB.`;
    return problem({ status: 413, title: "Too large", detail }, { connection: "close" });
  }
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return problem({ status: 400, title: "Not text", detail: "A board file is JSON in UTF-8." });
  }
}

/** Null where there is more; the rest is left unread. */
async function readUpTo(stream: ReadableStream<Uint8Array> | null, most: number): Promise<Uint8Array | null> {
  const parts: Uint8Array[] = [];
  let size = 0;
  if (stream !== null) {
    for await (const part of stream) {
      size += part.byteLength;
      if (size > most) return null;
      parts.push(part);
    }
  }
  return Buffer.concat(parts);
}
