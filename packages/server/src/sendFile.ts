import type { Context } from "hono";

interface SentFile {
  readonly id: string;
  readonly text: string;
  readonly revision: string;
}

/** A kept file as it is, its revision as the ETag. */
export function sendFile(context: Context, { id, text, revision }: SentFile): Response {
  const headers = {
    etag: `"${revision}"`,
    "cache-control": "no-cache",
    // A page reads it all the same; a link to it downloads it under this name.
    "content-disposition": `attachment; filename="${id}.json"`,
  };
  if (context.req.header("if-none-match") === headers.etag)
    return new Response(null, { status: 304, headers });
  return new Response(text, { headers: { ...headers, "content-type": "application/json" } });
}
