import { gunzipSync, gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import { webRoutes } from "./webRoutes";

const body = new TextEncoder().encode("<!doctype html>".repeat(100));
const packed = new Uint8Array(gzipSync(body));
const page = {
  body,
  packed: async () => packed,
  type: "text/html; charset=utf-8",
  etag: '"e"',
  lasting: false,
};
const routes = webRoutes(new Map([["/index.html", page]]));

const ask = (accepted: string | null) =>
  routes.request("/", { headers: accepted === null ? {} : { "accept-encoding": accepted } });

// RFC 9110, 12.5.3: a coding that is listed with a weight of nought is not taken.
test.each(["gzip", "br, GZIP;q=0.5", "deflate,gzip ; q=1"])(
  "is sent packed to who takes %s",
  async (accepted) => {
    const answer = await ask(accepted);
    expect(answer.headers.get("content-encoding")).toBe("gzip");
    expect(answer.headers.get("vary")).toBe("accept-encoding");
    expect(new Uint8Array(gunzipSync(await answer.arrayBuffer()))).toEqual(body);
  },
);

test.each([null, "", "br", "gzip;q=0", "gzip; q=0.0"])(
  "is sent as it is to who takes %s",
  async (accepted) => {
    const answer = await ask(accepted);
    expect(answer.headers.get("content-encoding")).toBeNull();
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(body);
  },
);
