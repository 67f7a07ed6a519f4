import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

const TEXT = JSON.stringify({ ...JSON.parse(DEMO_BOARDS[0]?.text ?? ""), record: [] });
const headers = { "content-type": "application/json" };
const ENTRY = { id: "e1", kind: "done", step: "prep", at: "2026-04-11T11:20" };

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());
const make = async (id: string) => {
  const answer = await server.send({ method: "PUT", path: `/api/boards/${id}`, headers, body: TEXT });
  return String(answer.headers.etag);
};
const putAway = (id: string, etag?: string) =>
  server.send({
    method: "DELETE",
    path: `/api/boards/${id}`,
    headers: etag === undefined ? {} : { "if-match": etag },
  });
const post = (path: string, body: unknown = {}, more = {}) =>
  server.send({
    method: "POST",
    path: `/api/boards/${path}`,
    headers: { ...headers, ...more },
    body: JSON.stringify(body),
  });
const idsAt = async (path: string) =>
  JSON.parse((await server.send({ path })).text).boards.map(({ id }: { id: string }) => id);

test("a board that is put away leaves the Shed, is written by nobody, and comes back with everything", async () => {
  const etag = await make("gone");
  expect((await putAway("gone")).status).toBe(428);
  expect((await putAway("gone", '"0"')).status).toBe(412);
  expect((await putAway("gone", etag)).status).toBe(200);
  expect((await putAway("gone", etag)).status).toBe(200);
  expect(await idsAt("/api/boards")).not.toContain("gone");
  expect(await idsAt("/api/put-away")).toEqual(["gone"]);
  const read = await server.send({ path: "/api/boards/gone" });
  expect(read.status).toBe(410);
  const write = { method: "PUT", path: "/api/boards/gone", body: `${TEXT}\n` };
  expect((await server.send({ ...write, headers: { ...headers, "if-match": etag } })).status).toBe(410);
  expect((await server.send({ ...write, headers })).status).toBe(428);
  // What a device wrote down while it was away is kept all the same.
  expect((await post("gone/journal", ENTRY)).status).toBe(201);
  expect((await server.send({ path: "/api/boards/gone/versions/1" })).text).toBe(TEXT);
  const back = await post("gone/bring-back");
  expect(back.status).toBe(200);
  expect(await idsAt("/api/boards")).toContain("gone");
  const text = (await server.send({ path: "/api/boards/gone" })).text;
  expect(JSON.parse(text).record).toEqual([ENTRY]);
  expect((await post("none/bring-back")).status).toBe(404);
  expect((await putAway("none", etag)).status).toBe(404);
});

test("an earlier version is taken back as the newest, with the whole journal", async () => {
  const etag = await make("back");
  const body = TEXT.replace('"name":"', '"name":"other ');
  await server.send({
    method: "PUT",
    path: "/api/boards/back",
    headers: { ...headers, "if-match": etag },
    body,
  });
  await post("back/journal", ENTRY);
  const newest = String((await server.send({ path: "/api/boards/back" })).headers.etag);
  expect((await post("back/versions/1/take-back")).status).toBe(428);
  const late = await post("back/versions/1/take-back", {}, { "if-match": etag });
  expect(late.status).toBe(412);
  expect((await post("back/versions/9/take-back", {}, { "if-match": newest })).status).toBe(404);
  const taken = await post("back/versions/1/take-back", {}, { "if-match": newest });
  expect(JSON.parse(taken.text)).toMatchObject({ version: 4, added: ["e1"] });
  const file = JSON.parse((await server.send({ path: "/api/boards/back" })).text);
  expect(file).toEqual({ ...JSON.parse(TEXT), record: [ENTRY] });
});
