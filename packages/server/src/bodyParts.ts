import type { Context } from "hono";
import { problem } from "./problem";

/** The body as it comes in, part by part. */
export async function* bodyParts(context: Context): AsyncGenerator<Uint8Array> {
  const { body } = context.req.raw;
  if (body !== null) yield* body;
}

/** The answer to a body that was packed: nothing sent here is unpacked, so that a small one cannot become a large one. */
export function refuseEncoded(context: Context): Response | null {
  const encoding = context.req.header("content-encoding")?.toLowerCase() ?? "identity";
  if (encoding === "identity") return null;
  const detail = "Send the body as it is, without content-encoding.";
  return problem({ status: 415, title: "Packed", detail }, { connection: "close" });
}
