import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { type Asked, anyRequest, CURRENT } from "./anyRequest";
import { startBuiltServer } from "./startBuiltServer";

export interface MutateRunOptions {
  readonly requests: number;
  readonly seed: number;
}

const AT_ONCE = 4;
const LONGEST_MS = 1000;
/** Longer than the server itself gives a Sheet: what has no answer then has none. */
const GIVEN_UP_MS = 180_000;

/**
 * Requests and board files that nobody would send: made up (fast-check, seeded), and demo boards with bytes, values and structure changed.
 * Every answer has to be one that the interface knows, within a second, and the server has to live on in a bounded memory.
 */
export async function mutateRun({ requests, seed }: MutateRunOptions) {
  const folder = await mkdtemp(join(tmpdir(), "lapline-mutate-"));
  const server = await startBuiltServer(folder);
  const wrong: string[] = [];
  const statuses: Record<number, number> = {};
  const etags = new Map<string, string>();
  const slow: { readonly words: string; readonly ms: number }[] = [];
  let [slowestMs, mostMemoryMb] = [0, 0];
  const asked = fc.sample(anyRequest, { seed, numRuns: requests });
  for (let from = 0; from < asked.length; from += AT_ONCE) {
    await Promise.all(asked.slice(from, from + AT_ONCE).map(ask));
    mostMemoryMb = Math.max(mostMemoryMb, await memoryMb(server.child.pid));
  }
  async function ask({ method, path, headers, body }: Asked): Promise<void> {
    const words = `${method} ${path.slice(0, 60)} (${body.length}: ${String(body).slice(0, 40)})`;
    // What a page would send that has just read the board.
    const match = headers["if-match"] === CURRENT ? { "if-match": etags.get(path) ?? '"none"' } : {};
    const began = performance.now();
    let isSheet = false;
    try {
      const response = await fetch(new URL(path, server.address), {
        method,
        headers: { ...headers, ...match },
        ...(method === "GET" || method === "HEAD" ? {} : { body: body as BodyInit }),
        signal: AbortSignal.timeout(GIVEN_UP_MS),
      });
      if (!path.startsWith("/api/changes")) await response.arrayBuffer();
      else await response.body?.cancel();
      isSheet = method === "POST" && path.endsWith("/sheets") && response.ok;
      const etag = response.headers.get("etag");
      if (etag !== null) etags.set(path, etag);
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
    // A Sheet that is made takes a thread of its own for a second or two; it holds nobody up.
    if (isSheet) return;
    slowestMs = Math.max(slowestMs, tookMs);
    slow.push({ words, ms: tookMs });
    slow.sort((one, other) => other.ms - one.ms).splice(5);
    if (tookMs > LONGEST_MS) wrong.push(`${words}: ${Math.round(tookMs)} ms`);
  }
  const isAlive = server.child.exitCode === null;
  server.child.kill("SIGTERM");
  await server.ended;
  await rm(folder, { recursive: true });
  return { requests: asked.length, wrong, statuses, slowestMs, slow, mostMemoryMb, isAlive };
}

const isCutOff = (error: unknown) =>
  error instanceof TypeError && /ECONNRESET|EPIPE|other side closed/.test(String(error.cause));

/** What the process holds in memory (Linux); 0 where that cannot be read. */
async function memoryMb(pid: number | undefined): Promise<number> {
  const status = await readFile(`/proc/${pid}/status`, "utf8").catch(() => "");
  return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
}
