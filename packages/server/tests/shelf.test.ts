import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());
const put = (path: string, record: unknown, headers: Record<string, string> = {}) =>
  server.send({
    method: "PUT",
    path: `/api/shelf/${path}`,
    headers: { "content-type": "application/json", ...headers },
    body: typeof record === "string" ? record : JSON.stringify(record),
  });
const { asSet: _, verify: __, ...FINS } = JSON.parse(DEMO_BOARDS[0]?.text ?? "").fins;
const FOAM = { kind: "eps", density: "22 kg/m3", name: "white 22" };

test.each([
  ["foams/white-22", FOAM],
  ["woods/balsa", { density: "140 kg/m3" }],
  ["cloths/strip", { fibre: "carbon", mass: "200 g/m2", weave: "one-way" }],
  [
    "resins/own",
    {
      kind: "two-part",
      ratioByMass: "100:45",
      potLife: { lasts: "25 min", mass: "100 g", temperature: "20 C" },
    },
  ],
  ["fillers/own-bubbles", { density: "150 kg/m3", share: "8 %" }],
  ["tints/own-blue", { name: "deep blue", most: "5 %" }],
  ["prices/white-22", { price: 80 }],
  ["rolls/strip", { width: "100 mm", price: 4 }],
  ["house-sets/winter-quad", { name: "winter quad", fins: FINS }],
])("%s is kept and read back", async (path, record) => {
  const kept = await put(path, record);
  expect(kept.text).toContain(`"revision"`);
  expect(kept.status).toBe(201);
  const read = await server.send({ path: `/api/shelf/${path}` });
  expect(JSON.parse(read.text)).toEqual(record);
  expect(read.headers.etag).toBe(kept.headers.etag);
  const { records } = JSON.parse((await server.send({ path: "/api/shelf" })).text);
  expect(records).toContainEqual(expect.objectContaining({ record, version: 1, device: "this machine" }));
});

test.each([
  ["foams/a", { ...FOAM, density: "22" }, "density"],
  ["foams/a", { ...FOAM, densty: "22 kg/m3" }, "densty"],
  ["foams/a", [FOAM], "(record)"],
  ["foams/a", null, "(record)"],
  ["foams/a", "{", "(file)"],
  ["foams/a", "[".repeat(5000), "(file)"],
  ["foams/a", '{"kind":"eps","kind":"pu","density":"22 kg/m3"}', "kind"],
  ["fillers/a", { density: "150 kg/m3" }, "share"],
  ["tints/a", { most: "5" }, "most"],
  ["prices/a", { price: "80" }, "price"],
  ["resins/a", { kind: "two-part", potLife: {} }, "potLife.lasts"],
  ["house-sets/a", { fins: FINS }, "name"],
  ["house-sets/a", { name: "a" }, "fins"],
  ["house-sets/a", { name: "a", fins: { ...FINS, verify: {} } }, "fins.verify"],
  ["house-sets/a", { name: "a", fins: { ...FINS, set: 1 } }, "set"],
])("%s, where %j, is refused with the place", async (path, record, place) => {
  const answer = await put(path, record);
  expect(answer.status).toBe(422);
  expect(JSON.parse(answer.text).problems.map((problem: { path: string }) => problem.path)).toContain(place);
  expect((await server.send({ path: `/api/shelf/${path}` })).status).toBe(404);
});

test.each([
  ["tools/a", 404],
  ["foams/A", 400],
  ["foams/..%2fa", 400],
  ["foams/constructor", 400],
])("nothing is kept as %s", async (path, status) => {
  expect((await put(path, FOAM)).status).toBe(status);
});

test("a record is changed only by who read it, taken off with its versions kept, and put on again", async () => {
  const path = "foams/shared";
  const first = await put(path, FOAM);
  const etag = String(first.headers.etag);
  expect((await put(path, { ...FOAM, name: "a" })).status).toBe(428);
  expect((await put(path, { ...FOAM, name: "a" }, { "if-match": etag })).status).toBe(200);
  const late = await put(path, { ...FOAM, name: "b" }, { "if-match": etag });
  expect(late.status).toBe(412);
  expect(JSON.parse(late.text).differences).toEqual([
    { path: "name", before: FOAM.name, kept: "a", sent: "b", clash: true },
  ]);
  const take = (headers: Record<string, string>) =>
    server.send({ method: "DELETE", path: `/api/shelf/${path}`, headers });
  expect((await take({})).status).toBe(428);
  expect((await take({ "if-match": String(late.headers.etag) })).status).toBe(204);
  expect((await server.send({ path: `/api/shelf/${path}` })).status).toBe(404);
  expect((await put(path, FOAM)).status).toBe(201);
  const { versions } = JSON.parse((await server.send({ path: `/api/shelf/${path}/versions` })).text);
  expect(versions.map((each: { record: unknown }) => each.record)).toEqual([
    FOAM,
    null,
    { ...FOAM, name: "a" },
    FOAM,
  ]);
});
