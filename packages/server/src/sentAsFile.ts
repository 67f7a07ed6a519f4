import { Readable } from "node:stream";
import type { Context } from "hono";

interface SentFile {
  readonly etag: string;
  readonly type: string;
  readonly name: string;
  readonly shows: "inline" | "attachment";
  readonly sizeBytes?: number;
}

/** May be opened by itself, and even then runs nothing and loads nothing. */
const SANDBOX = "default-src 'none'; img-src 'self'; style-src 'unsafe-inline'; sandbox";
const FOREVER = "private, max-age=31536000, immutable";

/** A file that never changes under its address, as what it is and nothing else. */
export async function sentAsFile(
  context: Context,
  { etag, type, name, shows, sizeBytes }: SentFile,
  open: () => Promise<Readable>,
): Promise<Response> {
  const headers: Record<string, string> = {
    etag: `"${etag}"`,
    "cache-control": FOREVER,
    "content-security-policy": SANDBOX,
    "content-disposition": `${shows}; filename="${name}"`,
  };
  if (context.req.header("if-none-match") === headers.etag)
    return new Response(null, { status: 304, headers });
  if (sizeBytes !== undefined) headers["content-length"] = String(sizeBytes);
  return new Response(Readable.toWeb(await open()) as ReadableStream, {
    headers: { ...headers, "content-type": type },
  });
}
