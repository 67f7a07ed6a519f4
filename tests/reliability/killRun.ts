import { DEMO_BOARDS } from "@lapline/contract";
import { openShop } from "@lapline/store";
import type { Postgres } from "../../packages/store/tests/startPostgres";
import { startBuiltServer } from "./startBuiltServer";

const CLIENTS = 4;
/** A kill falls after so many acknowledged writes at most, and so many turns of the event loop later. */
const MOST_WRITES = 40;
const MOST_TURNS = 400;
/** One write in so many goes to the journal, the others to the board. */
const JOURNAL_EVERY = 3;

export interface KillRunOptions {
  readonly folder: string;
  readonly kills: number;
  readonly seed: number;
  /** With it the shop is kept there, and every other kill takes its server too. */
  readonly postgres?: Postgres;
  readonly onKill?: (done: number) => void;
}

export interface KillRunFigures {
  readonly kills: number;
  readonly databaseKills: number;
  readonly acknowledged: number;
  /** Writes that were sent and not answered: either outcome is right, but not half of it. */
  readonly unanswered: number;
  readonly lost: readonly string[];
  readonly doubled: readonly string[];
  readonly check: readonly string[];
}

interface Client {
  readonly id: string;
  revision: string | null;
  sent: number;
  readonly versions: string[];
  readonly entries: string[];
}

/**
 * The real server under writes from four clients, killed with SIGKILL at seeded points and started again, over and over; then every
 * acknowledged write is looked for, once, and the database's own check is run.
 */
export async function killRun({
  folder,
  kills,
  seed,
  postgres,
  onKill,
}: KillRunOptions): Promise<KillRunFigures> {
  const random = makeRandom(seed);
  const databaseUrl = postgres?.makeShop("killed");
  const clients = Array.from(
    { length: CLIENTS },
    (_, i): Client => ({
      id: `client-${i + 1}`,
      revision: null,
      sent: 0,
      versions: [],
      entries: [],
    }),
  );
  let [unanswered, databaseKills] = [0, 0];
  for (let kill = 1; kill <= kills; kill++) {
    const server = await startBuiltServer(folder, databaseUrl);
    let left = 1 + Math.floor(random() * MOST_WRITES);
    const turns = Math.floor(random() * MOST_TURNS);
    const isDatabaseToo = postgres !== undefined && kill % 2 === 0;
    const acknowledged = async () => {
      if (--left !== 0) return;
      for (let turn = 0; turn < turns; turn++) await new Promise((resolve) => setImmediate(resolve));
      server.child.kill("SIGKILL");
    };
    const outcomes = await Promise.all(
      clients.map((client) => writeUntilGone(server.address, client, acknowledged)),
    );
    unanswered += outcomes.filter((isOpen) => isOpen).length;
    await server.ended;
    if (isDatabaseToo) {
      await postgres.killAndRestart();
      databaseKills++;
    }
    onKill?.(kill);
  }
  const acknowledged = clients.reduce(
    (sum, { versions, entries }) => sum + versions.length + entries.length,
    0,
  );
  return { kills, databaseKills, acknowledged, unanswered, ...(await look(clients, folder, databaseUrl)) };
}

/** Writes one after the other until the server is gone; whether the last one was left unanswered. */
async function writeUntilGone(
  address: string,
  client: Client,
  acknowledged: () => Promise<void>,
): Promise<boolean> {
  for (;;) {
    try {
      client.revision ??= await readRevision(address, client.id);
      client.sent++;
      const isEntry = client.revision !== null && client.sent % JOURNAL_EVERY === 0;
      const word = `${client.id}-${client.sent}`;
      const response = isEntry
        ? await postEntry(address, client, word)
        : await putBoard(address, client, word);
      if (!response.ok) throw new RefusedWriteError(`${response.status}: ${await response.text()}`);
      await response.arrayBuffer();
      if (!isEntry) client.revision = response.headers.get("etag");
      (isEntry ? client.entries : client.versions).push(word);
    } catch (error) {
      if (error instanceof RefusedWriteError) throw error;
      // Which version is there is read again after the restart, as a page does.
      client.revision = null;
      return true;
    }
    void acknowledged();
  }
}

/** The server answered, and not as it should. */
class RefusedWriteError extends Error {}

async function readRevision(address: string, id: string): Promise<string | null> {
  const response = await fetch(`${address}api/boards/${id}`);
  await response.arrayBuffer();
  return response.ok ? response.headers.get("etag") : null;
}

function putBoard(address: string, { id, revision }: Client, word: string): Promise<Response> {
  const condition: Record<string, string> =
    revision === null ? { "if-none-match": "*" } : { "if-match": revision };
  const body = JSON.stringify({ ...JSON.parse(DEMO_BOARDS[0]?.text ?? ""), name: word });
  const headers = { "content-type": "application/json", ...condition };
  return fetch(`${address}api/boards/${id}`, { method: "PUT", headers, body });
}

function postEntry(address: string, { id }: Client, word: string): Promise<Response> {
  const body = JSON.stringify({ id: word, kind: "done", step: "prep", at: "2026-04-11T11:20" });
  const headers = { "content-type": "application/json" };
  return fetch(`${address}api/boards/${id}/journal`, { method: "POST", headers, body });
}

/** Each acknowledged version and entry is there once, and whole. */
async function look(clients: readonly Client[], folder: string, databaseUrl: string | undefined) {
  const shop = await openShop({
    folder,
    ...(databaseUrl === undefined ? {} : { databaseUrl }),
    engine: "test",
    now: () => new Date(0),
    report: () => undefined,
  });
  const [lost, doubled]: [string[], string[]] = [[], []];
  const hold = (words: readonly string[], kept: readonly string[]) => {
    for (const word of words) {
      const times = kept.filter((each) => each === word).length;
      if (times === 0) lost.push(word);
      if (times > 1) doubled.push(word);
    }
  };
  for (const { id, versions, entries } of clients) {
    const names: string[] = [];
    for (const { version } of await shop.boards.listVersions(id))
      names.push(JSON.parse((await shop.boards.readVersion(id, version))?.text ?? "{}").name);
    // A journal's entry makes a version too, under the name that the board has.
    hold(
      versions,
      names.filter((name, i) => name !== names[i + 1]),
    );
    const record: { readonly id: string }[] = JSON.parse((await shop.boards.read(id))?.text ?? "{}").record;
    hold(
      entries,
      record.map((entry) => entry.id),
    );
    hold(
      entries,
      (await shop.journal.list(id)).map((entry) => entry.id),
    );
  }
  const check = await shop.check();
  await shop.close();
  return { lost, doubled, check };
}

/** Mulberry32: the same points in every run of a seed. */
function makeRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
