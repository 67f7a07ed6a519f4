import { createHash } from "node:crypto";
import type { Dirent } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { extname, join, relative, sep } from "node:path";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

/** A file of the built web app, ready to be sent. */
export interface WebFile {
  readonly body: Uint8Array<ArrayBuffer>;
  /** The same for a browser that takes gzip, packed when it is first asked for; null where it would not be shorter. */
  packed(): Promise<Uint8Array<ArrayBuffer> | null>;
  readonly type: string;
  readonly etag: string;
  /** Its name carries a hash of its content, so that it never changes. */
  readonly lasting: boolean;
}

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".map": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
  ".txt": "text/plain; charset=utf-8",
};

/**
 * Reads the built web app into memory, keyed by URL path. Only what was read can be sent, so that no request can reach
 * another file. Throws where the folder cannot be read.
 */
export async function loadWebFiles(folder: string): Promise<ReadonlyMap<string, WebFile>> {
  const files = new Map<string, WebFile>();
  for (const entry of await listFolder(folder)) {
    if (!entry.isFile()) continue;
    const path = join(entry.parentPath, entry.name);
    const body = new Uint8Array(await readFile(path));
    const url = `/${relative(folder, path).split(sep).join("/")}`;
    files.set(url, {
      body,
      packed: packedOnce(body),
      type: TYPES[extname(path).toLowerCase()] ?? "application/octet-stream",
      etag: `"${createHash("sha256").update(body).digest("hex").slice(0, 32)}"`,
      lasting: url.startsWith("/assets/"),
    });
  }
  return files;
}

const pack = promisify(gzip);

function packedOnce(body: Uint8Array<ArrayBuffer>): WebFile["packed"] {
  let packing: ReturnType<WebFile["packed"]> | undefined;
  return () => {
    packing ??= packBody(body);
    return packing;
  };
}

async function packBody(body: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | null> {
  const packed = new Uint8Array(await pack(body, { level: 9 }));
  return packed.length < body.length ? packed : null;
}

async function listFolder(folder: string): Promise<Dirent[]> {
  try {
    return await readdir(folder, { recursive: true, withFileTypes: true });
  } catch (error) {
    throw new Error("The web app is not built, or cannot be read: npm run build makes it.", { cause: error });
  }
}
