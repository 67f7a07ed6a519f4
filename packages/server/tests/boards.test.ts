import { readdir } from "node:fs/promises";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");
const JSON_HEADERS = { "content-type": "application/json" };

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());

const put = (id: string, body: string | Uint8Array, headers: Record<string, string> = {}) =>
  server.send({ method: "PUT", path: `/api/boards/${id}`, headers: { ...JSON_HEADERS, ...headers }, body });

describe("boards over HTTP", () => {
  test("are listed with what one knows them by", async () => {
    const answer = await server.send({ path: "/api/boards" });
    const { boards } = JSON.parse(answer.text);
    expect(boards.map((board: { id: string }) => board.id)).toEqual(DEMO_BOARDS.map(({ id }) => id).sort());
    const { name, survey } = JSON.parse(DEMO.text);
    expect(boards.find((board: { id: string }) => board.id === DEMO.id)).toMatchObject({
      name,
      length: survey.length,
      tail: survey.tail.kind,
      readable: true,
    });
  });

  test("are handed out as they were kept, and not twice", async () => {
    const first = await server.send({ path: `/api/boards/${DEMO.id}` });
    expect(first).toMatchObject({ status: 200, text: DEMO.text });
    expect(first.headers["content-disposition"]).toBe(`attachment; filename="${DEMO.id}.json"`);
    const etag = String(first.headers.etag);
    const again = await server.send({ path: `/api/boards/${DEMO.id}`, headers: { "if-none-match": etag } });
    expect(again).toMatchObject({ status: 304, text: "" });
  });

  test("are taken in as files, each under an id of its own from its name", async () => {
    const post = () =>
      server.send({ method: "POST", path: "/api/boards", headers: JSON_HEADERS, body: DEMO.text });
    const [one, two] = [await post(), await post()];
    expect([one.status, two.status]).toEqual([201, 201]);
    const { id, revision } = JSON.parse(one.text);
    expect(one.headers).toMatchObject({ location: `/api/boards/${id}`, etag: `"${revision}"` });
    expect(JSON.parse(two.text).id).toBe(`${id}-2`);
    for (const { headers } of [one, two])
      expect((await server.send({ path: String(headers.location) })).text).toBe(DEMO.text);
  });

  test("are kept under a new name, then over it", async () => {
    const first = await put("a-new-one", DEMO.text);
    expect(first.status).toBe(201);
    const second = await put("a-new-one", `${DEMO.text}\n`, { "if-match": String(first.headers.etag) });
    expect(second.status).toBe(200);
    expect((await server.send({ path: "/api/boards/a-new-one" })).text).toBe(`${DEMO.text}\n`);
    const { versions } = JSON.parse((await server.send({ path: "/api/boards/a-new-one/versions" })).text);
    expect(versions).toMatchObject([
      { version: 2, savedAt: "2026-04-11T09:00:00.000Z", device: "this machine", engine: "1.2.3" },
      { version: 1, revision: String(first.headers.etag).slice(1, -1) },
    ]);
    expect((await server.send({ path: "/api/boards/a-new-one/versions/1" })).text).toBe(DEMO.text);
    expect((await server.send({ path: "/api/boards/a-new-one/versions/3" })).status).toBe(404);
  });

  test("are not written over a change that the writer has not seen", async () => {
    const first = await put("shared", DEMO.text);
    const etag = String(first.headers.etag);
    expect((await put("shared", `${DEMO.text}\n`, { "if-match": etag })).status).toBe(200);
    const late = await put("shared", DEMO.text, { "if-match": etag });
    expect(late.status).toBe(412);
    expect(late.headers["content-type"]).toBe("application/problem+json");
    expect((await put("shared", DEMO.text, { "if-none-match": "*" })).status).toBe(412);
  });

  test("two changes to one field: one is kept, the other comes back with both and what stood before", async () => {
    const first = await put("twice", DEMO.text);
    const etag = String(first.headers.etag);
    const named = (name: string) => JSON.stringify({ ...JSON.parse(DEMO.text), name });
    const answers = await Promise.all(
      ["mine", "yours"].map((name) => put("twice", named(name), { "if-match": etag })),
    );
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    const late = JSON.parse(answers.find(({ status }) => status === 412)?.text ?? "");
    expect(late.differences).toEqual([
      {
        path: "name",
        before: JSON.parse(DEMO.text).name,
        kept: late.kept.file.name,
        sent: late.sent.file.name,
        clash: true,
      },
    ]);
    expect([late.kept.file.name, late.sent.file.name].sort()).toEqual(["mine", "yours"]);
    expect(JSON.parse((await server.send({ path: "/api/boards/twice" })).text).name).toBe(
      late.kept.file.name,
    );
  });

  test("are not written over by who does not say what was read", async () => {
    expect((await put(DEMO.id, `${DEMO.text}\n`)).status).toBe(428);
    expect((await server.send({ path: `/api/boards/${DEMO.id}` })).text).toBe(DEMO.text);
  });

  test("sent twice, because the first answer was not heard, are one version", async () => {
    const first = await put("again", DEMO.text);
    const send = () => put("again", `${DEMO.text}\n`, { "if-match": String(first.headers.etag) });
    expect([(await send()).status, (await send()).status]).toEqual([200, 200]);
    expect(await server.shop.boards.listVersions("again")).toHaveLength(2);
  });

  test("become the plan that the engine makes of them", async () => {
    const answer = await server.send({
      method: "POST",
      path: "/api/plan",
      headers: JSON_HEADERS,
      body: DEMO.text,
    });
    const read = readBoardFile(DEMO.text);
    if (!read.ok) throw new Error("the demo board cannot be read");
    expect(answer.status).toBe(200);
    expect(JSON.parse(answer.text)).toEqual(JSON.parse(JSON.stringify(planBuild(read.board))));
  });
});

describe("a board file that cannot be taken", () => {
  const spoilt = DEMO.text.replace('"survey"', '"surwey"');

  test.each([
    ["empty", ""],
    ["broken off", DEMO.text.slice(0, 200)],
    ["no object", "[]"],
    ["with a field that is not known", spoilt],
    ["nested without end", "[".repeat(100_000)],
    ["with a number that is none", '{"format":"lapline-board/1","name":NaN}'],
  ])("%s is answered with every fault, and nothing is kept", async (_, body) => {
    const before = await server.shop.boards.listSummaries();
    for (const path of ["/api/boards/refused", "/api/boards", "/api/plan"]) {
      const method = path === "/api/boards/refused" ? "PUT" : "POST";
      const answer = await server.send({ method, path, headers: JSON_HEADERS, body });
      expect(answer.status).toBe(422);
      expect(answer.headers["content-type"]).toBe("application/problem+json");
      const { title, status, problems } = JSON.parse(answer.text);
      expect({ title, status }).toEqual({ title: "Not a board file", status: 422 });
      expect(problems.length).toBeGreaterThan(0);
    }
    expect(await server.shop.boards.listSummaries()).toEqual(before);
  });

  test.each([
    ["of another type", 415, DEMO.text, "text/plain"],
    ["of no type", 415, DEMO.text, ""],
    ["in no known script", 400, Buffer.from([0x7b, 0xff, 0xfe, 0x7d]), "application/json"],
    ["too large", 413, " ".repeat(10_000_000), "application/json"],
  ])("%s is refused with %i", async (_, status, body, type) => {
    const answer = await put("refused", body, { "content-type": type });
    expect(answer.status).toBe(status);
    expect(JSON.parse(answer.text).status).toBe(status);
    expect(await server.shop.boards.read("refused")).toBeNull();
  });

  test.each([
    "..%2fsecret",
    "%2e%2e%2fsecret",
    "..%5csecret",
    "A",
    "a.json",
    "a%00b",
    ".",
    "%",
    "%ff",
    "a".repeat(5000),
  ])("is not kept as %s", async (id) => {
    const before = await readdir(server.folder, { recursive: true });
    expect((await put(id, DEMO.text)).status).toBeGreaterThanOrEqual(400);
    expect((await server.send({ path: `/api/boards/${id}` })).text).not.toContain('"survey"');
    expect(await readdir(server.folder, { recursive: true })).toEqual(before);
  });
});
