import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { cpuSeconds, startBuiltServer } from "./startBuiltServer";

export interface LoadRunOptions {
  readonly devices: number;
  readonly writesPerSecond: number;
  readonly seconds: number;
}

/** One write in so many saves the board; the others are entries of the journal. */
const SAVE_EVERY = 5;
/** How often it looks whether the last events have come. */
const MOST_TURNS = 1000;

/**
 * Devices that each keep the changes open and write in turn, at an even rate whatever the answers take, to a server in a process of its
 * own. The time of a write runs from when it was due, so that a server that stalls is not spared what waits behind it.
 */
export async function loadRun({ devices, writesPerSecond, seconds }: LoadRunOptions) {
  const folder = await mkdtemp(join(tmpdir(), "lapline-load-"));
  const server = await startBuiltServer(folder);
  const stop = new AbortController();
  const boards = Array.from({ length: devices }, (_, i) => `board-${i}`);
  const heard = new Array<number>(devices).fill(0);
  for (const id of boards) await put(server.address, id, "start", { "if-none-match": "*" });
  const listening = boards.map((_, i) =>
    listen(server.address, stop.signal, () => {
      heard[i] = (heard[i] ?? 0) + 1;
    }),
  );
  await Promise.all(listening.map(({ open }) => open));
  const took: number[] = [];
  let refused = 0;
  const etags = new Map<string, string>();
  const write = async (n: number, due: number) => {
    const id = boards[n % devices] ?? "";
    const isSave = (n + Math.floor(n / devices)) % SAVE_EVERY === 0;
    const response = isSave ? await save(server.address, id, n, etags) : await entry(server.address, id, n);
    await response.arrayBuffer();
    if (!response.ok) refused++;
    took.push(performance.now() - due);
  };
  const last: Promise<void>[] = [];
  const [serverBefore, cpuBefore] = [await cpuSeconds(server.child.pid), process.cpuUsage()];
  const began = performance.now();
  const writes = Array.from({ length: writesPerSecond * seconds }, async (_, n) => {
    const due = began + (n * 1000) / writesPerSecond;
    await new Promise((resolve) => setTimeout(resolve, Math.max(0, due - performance.now())));
    // A device sends one write after the other.
    const own = (last[n % devices] ?? Promise.resolve()).then(() => write(n, due));
    last[n % devices] = own;
    await own;
  });
  await Promise.all(writes);
  const lasted = (performance.now() - began) / 1000;
  const askerCpu = process.cpuUsage(cpuBefore);
  const serverCpuS = (await cpuSeconds(server.child.pid)) - serverBefore;
  // The last events are still on their way.
  for (let turn = 0; turn < MOST_TURNS && Math.min(...heard) < took.length; turn++)
    await new Promise((resolve) => setTimeout(resolve, 50));
  stop.abort();
  await Promise.all(listening.map(({ ended }) => ended));
  server.child.kill("SIGTERM");
  await server.ended;
  await rm(folder, { recursive: true });
  took.sort((a, b) => a - b);
  const at = (share: number) => took[Math.min(took.length - 1, Math.floor(share * took.length))] ?? 0;
  return {
    writes: took.length,
    refused,
    lastedS: lasted,
    events: heard.reduce((sum, each) => sum + each, 0),
    /** What the server's process worked, and what this one did, which asks, listens and reads. */
    serverCpuS,
    askerCpuS: (askerCpu.user + askerCpu.system) / 1e6,
    p50Ms: at(0.5),
    p95Ms: at(0.95),
    p99Ms: at(0.99),
    worstMs: at(1),
  };
}

async function save(address: string, id: string, n: number, etags: Map<string, string>): Promise<Response> {
  const etag = etags.get(id) ?? (await ask(`${address}api/boards/${id}`)).headers.get("etag") ?? "";
  const response = await put(address, id, `name ${n}`, { "if-match": etag });
  etags.set(id, response.headers.get("etag") ?? etag);
  return response;
}

const BOARD = JSON.parse(DEMO_BOARDS[0]?.text ?? "{}") as object;

function put(
  address: string,
  id: string,
  name: string,
  condition: Record<string, string>,
): Promise<Response> {
  const headers = { "content-type": "application/json", ...condition };
  const body = JSON.stringify({ ...BOARD, name });
  return ask(`${address}api/boards/${id}`, { method: "PUT", headers, body });
}

function entry(address: string, id: string, n: number): Promise<Response> {
  const body = JSON.stringify({ id: `e${n}`, kind: "done", step: "prep", at: "2026-04-11T11:20" });
  const headers = { "content-type": "application/json" };
  return ask(`${address}api/boards/${id}/journal`, { method: "POST", headers, body });
}

/** A connection that the server closes just as it is used again is no answer: every write here can be sent twice and is kept once. */
async function ask(url: string, request: RequestInit = {}): Promise<Response> {
  return fetch(url, request).catch(() => fetch(url, request));
}

function listen(address: string, signal: AbortSignal, heard: () => void) {
  let opened: () => void = () => undefined;
  const open = new Promise<void>((resolve) => {
    opened = resolve;
  });
  const ended = (async () => {
    const response = await fetch(`${address}api/changes`, { signal });
    opened();
    const decoder = new TextDecoder();
    let rest = "";
    for await (const part of response.body ?? []) {
      const lines = (rest + decoder.decode(part, { stream: true })).split("\n");
      rest = lines.pop() ?? "";
      for (const line of lines) if (line === "event: change") heard();
    }
  })().catch((error: unknown) => {
    if (!signal.aborted) throw error;
  });
  return { open, ended };
}
