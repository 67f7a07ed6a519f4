import { Hono } from "hono";
import type { WebFile } from "./loadWebFiles";
import { problem } from "./problem";

const FOREVER = "public, max-age=31536000, immutable";

/** Sends the web app. A path without a file ending is one of the app's own pages and gets its first page. */
export function webRoutes(files: ReadonlyMap<string, WebFile>): Hono {
  const routes = new Hono();
  routes.get("*", async (context) => {
    const path = context.req.path;
    const isPage = !(path.split("/").at(-1) ?? "").includes(".");
    const file = files.get(isPage ? "/index.html" : path);
    if (file === undefined) {
      return problem({ status: 404, title: "No such page", detail: "There is nothing under this address." });
    }
    const headers = {
      etag: file.etag,
      "cache-control": file.lasting ? FOREVER : "no-cache",
      vary: "accept-encoding",
    };
    if (context.req.header("if-none-match") === file.etag)
      return new Response(null, { status: 304, headers });
    const sent = { ...headers, "content-type": file.type };
    const packed = takesGzip(context.req.header("accept-encoding")) ? await file.packed() : null;
    if (packed !== null) return new Response(packed, { headers: { ...sent, "content-encoding": "gzip" } });
    return new Response(file.body, { headers: sent });
  });
  return routes;
}

/** Named in the list, and not with a weight of nought. */
function takesGzip(accepted = ""): boolean {
  return accepted
    .toLowerCase()
    .split(",")
    .some((each) => /^\s*gzip\s*(;\s*q=(?!0(\.0*)?\s*$).*)?$/.test(each));
}
