import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

const headers = { "content-type": "application/json" };
const PATH = `/api/boards/${DEMO_BOARDS[0]?.id}/journal`;
const ENTRY = {
  id: "0f8fad5b-d9cb-469f-a165-70867728950e",
  kind: "done",
  step: "prep",
  at: "2026-04-11T11:20",
};

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());
const post = (entry: unknown, path = PATH) =>
  server.send({ method: "POST", path, headers, body: JSON.stringify(entry) });
const count = async () => JSON.parse((await server.send({ path: PATH })).text).entries.length;

test("an entry sent again is kept once; another one under its id is refused with the first", async () => {
  expect([(await post(ENTRY)).status, (await post(ENTRY)).status]).toEqual([201, 200]);
  expect(await count()).toBe(1);
  const other = await post({ ...ENTRY, at: "2026-04-11T12:00" });
  expect(other.status).toBe(409);
  expect(JSON.parse(other.text).kept.entry).toEqual(ENTRY);
});

test("an entry may correct an earlier one of the journal", async () => {
  expect((await post({ ...ENTRY, id: "c1", at: "2026-04-11T12:00", corrects: ENTRY.id })).status).toBe(201);
});

test.each([
  ["of no kind", { id: "x1" }],
  ["without an id", { kind: "done", step: "prep" }],
  ["of an unknown kind", { id: "x2", kind: "eaten" }],
  ["that corrects nothing", { ...ENTRY, id: "x3", corrects: "nowhere" }],
  ["with a bare number", { id: "x4", kind: "weighed", after: "prep", mass: 2 }],
  ["that is a list", [ENTRY]],
  ["that is null", null],
])("an entry %s is refused, and nothing is kept", async (_, entry) => {
  const before = await count();
  expect((await post(entry)).status).toBe(422);
  expect(await count()).toBe(before);
});

test("there is no journal without its board", async () => {
  expect((await post(ENTRY, "/api/boards/none/journal")).status).toBe(404);
  expect((await server.send({ path: "/api/boards/none/journal" })).status).toBe(404);
});

test("what is kept is told as it happens, and what was missed when a page comes back", async () => {
  const stop = new AbortController();
  const open = async (headers: Record<string, string> = {}) => {
    const response = await fetch(`http://127.0.0.1:${server.port}/api/changes`, {
      headers,
      signal: stop.signal,
    });
    expect(response.headers.get("content-type")).toContain("text/event-stream");
    const reader = (response.body as ReadableStream<Uint8Array>).getReader();
    let heard = "";
    return async (word: string) => {
      while (!heard.includes(word)) heard += new TextDecoder().decode((await reader.read()).value);
      return heard;
    };
  };
  const hears = await open();
  await hears("event: open");
  await post({ ...ENTRY, id: "live" });
  expect(await hears('"item":"live"')).toContain("event: change");
  const late = await open({ "last-event-id": String((await server.shop.changes.last()) - 1) });
  expect(await late('"item":"live"')).toContain("event: change");
  stop.abort();
});
