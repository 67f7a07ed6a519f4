import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { DEMO_BOARDS } from "@lapline/contract";
import fc from "fast-check";
import { startBuiltServer } from "./startBuiltServer";

export interface MutateRunOptions {
  readonly requests: number;
  readonly seed: number;
}

const AT_ONCE = 4;
const LONGEST_MS = 1000;
const SOURCE = DEMO_BOARDS.map(({ text }) => text);
const IDS = DEMO_BOARDS.map(({ id }) => id);

/**
 * Requests and board files that nobody would send: made up (fast-check, seeded), and demo boards with bytes, values and structure changed.
 * Every answer has to be one that the interface knows, within a second, and the server has to live on in a bounded memory.
 */
export async function mutateRun({ requests, seed }: MutateRunOptions) {
  const folder = await mkdtemp(join(tmpdir(), "lapline-mutate-"));
  const server = await startBuiltServer(folder);
  const wrong: string[] = [];
  const statuses: Record<number, number> = {};
  let [slowestMs, mostMemoryMb] = [0, 0];
  const asked = fc.sample(anyRequest, { seed, numRuns: requests });
  for (let from = 0; from < asked.length; from += AT_ONCE) {
    await Promise.all(asked.slice(from, from + AT_ONCE).map(ask));
    mostMemoryMb = Math.max(mostMemoryMb, await memoryMb(server.child.pid));
  }
  async function ask({ method, path, headers, body }: Asked): Promise<void> {
    const words = `${method} ${path.slice(0, 60)}`;
    const began = performance.now();
    try {
      const response = await fetch(new URL(path, server.address), {
        method,
        headers,
        ...(method === "GET" || method === "HEAD" ? {} : { body: body as BodyInit }),
        signal: AbortSignal.timeout(10_000),
      });
      if (!path.startsWith("/api/changes")) await response.arrayBuffer();
      else await response.body?.cancel();
      statuses[response.status] = (statuses[response.status] ?? 0) + 1;
      if (response.status >= 500) wrong.push(`${words}: ${response.status}`);
    } catch (error) {
      // A refused body that is still on its way may be cut off; the server itself must be there.
      const isThere = await fetch(new URL("/api/health", server.address)).then(
        (health) => health.ok,
        () => false,
      );
      if (!isThere || !isCutOff(error)) wrong.push(`${words}: ${String(error)}`);
    }
    const tookMs = performance.now() - began;
    slowestMs = Math.max(slowestMs, tookMs);
    if (tookMs > LONGEST_MS) wrong.push(`${words}: ${Math.round(tookMs)} ms`);
  }
  const isAlive = server.child.exitCode === null;
  server.child.kill("SIGTERM");
  await server.ended;
  await rm(folder, { recursive: true });
  return { requests: asked.length, wrong, statuses, slowestMs, mostMemoryMb, isAlive };
}

const isCutOff = (error: unknown) =>
  error instanceof TypeError && /ECONNRESET|EPIPE|other side closed/.test(String(error.cause));

interface Asked {
  readonly method: string;
  readonly path: string;
  readonly headers: Record<string, string>;
  readonly body: string | Uint8Array;
}

const word = fc.oneof(
  fc.constantFrom(
    ...IDS,
    "none",
    "..%2f..%2fetc%2fpasswd",
    "%00",
    "%ff",
    "__proto__",
    "constructor",
    "a".repeat(3000),
  ),
  fc.string().map(encodeURIComponent),
);
const path = fc.oneof(
  fc.constantFrom(
    "/api/boards",
    "/api/plan",
    "/api/shelf",
    "/api/archive",
    "/api/changes",
    "/api/openapi.json",
    "/api/pairing",
  ),
  word.map((id) => `/api/boards/${id}`),
  fc
    .tuple(word, fc.constantFrom("journal", "photos", "sheets", "versions", "bring-back"))
    .map(([id, what]) => `/api/boards/${id}/${what}`),
  fc
    .tuple(word, fc.constantFrom("photos", "sheets", "versions"), word)
    .map(([id, what, which]) => `/api/boards/${id}/${what}/${which}`),
  fc
    .tuple(fc.oneof(word, fc.constantFrom("foams", "resins", "prices", "house-sets")), word)
    .map(([shelf, id]) => `/api/shelf/${shelf}/${id}`),
  fc.webPath().map((any) => `/api${any}`),
);

/** One change of a demo board: bytes cut, doubled or replaced, or a value put where another belongs. */
const mutated = fc
  .tuple(fc.constantFrom(...SOURCE), fc.nat(), fc.nat(300), fc.string({ maxLength: 20, unit: "binary" }))
  .map(([text, at, size, put]) => {
    const place = at % text.length;
    return text.slice(0, place) + put + text.slice(place + size);
  });
const confused = fc
  .tuple(fc.constantFrom(...SOURCE), fc.nat(), fc.jsonValue({ maxDepth: 3 }))
  .map(([text, at, value]) => {
    const board = JSON.parse(text) as Record<string, unknown>;
    const place = placesOf(board);
    const [holder, key] = place[at % place.length] ?? [board, "name"];
    holder[key] = value;
    return JSON.stringify(board);
  });

type Holder = Record<string, unknown>;

function placesOf(value: Holder): [Holder, string][] {
  return Object.entries(value).flatMap(([key, inner]) => [
    [value, key] as [Holder, string],
    ...(typeof inner === "object" && inner !== null ? placesOf(inner as Holder) : []),
  ]);
}

const body = fc.oneof(
  { weight: 6, arbitrary: mutated },
  { weight: 6, arbitrary: confused },
  { weight: 3, arbitrary: fc.json() },
  { weight: 2, arbitrary: fc.uint8Array({ maxLength: 300 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom<string | Uint8Array>(
      "[".repeat(200_000),
      `{"a":`.repeat(50_000),
      " ".repeat(2_100_000),
      gzipSync(Buffer.alloc(20_000_000)),
      Buffer.concat([Buffer.from("ffd8ffe0", "hex"), Buffer.alloc(1_000_000)]),
      '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>',
      '{"format":"lapline-shop/1","schema":1}\n{"end":0,"sha256":""}\n',
    ),
  },
);
const anyRequest: fc.Arbitrary<Asked> = fc.record({
  method: fc.constantFrom("GET", "PUT", "POST", "POST", "PUT", "DELETE", "PATCH", "HEAD"),
  path,
  headers: fc
    .record({
      "content-type": fc.constantFrom(
        "application/json",
        "application/json",
        "application/json",
        "application/jsonl",
        "image/png",
        "text/plain",
      ),
      "if-match": fc.constantFrom('"0"', "*", 'W/"1"', ""),
      "content-encoding": fc.constantFrom("identity", "identity", "gzip"),
      "last-event-id": fc.constantFrom("1", "-1", "99999999999", "a"),
    })
    .map(
      ({ "if-match": match, ...rest }): Record<string, string> =>
        match === "" ? rest : { ...rest, "if-match": match },
    ),
  body,
});

/** What the process holds in memory (Linux); 0 where that cannot be read. */
async function memoryMb(pid: number | undefined): Promise<number> {
  const status = await readFile(`/proc/${pid}/status`, "utf8").catch(() => "");
  return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
}
