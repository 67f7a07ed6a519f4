import { createHash } from "node:crypto";
import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildFirst } from "../../../tests/buildFirst";
import { sheetRoutes } from "../src/sheetRoutes";
import { startTestServer, type TestServer } from "./startTestServer";

const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");
const headers = { "content-type": "application/json" };
const SHEETS = `/api/boards/${DEMO.id}/sheets`;

let server: TestServer;
beforeAll(async () => {
  buildFirst("cli");
  server = await startTestServer();
});
afterAll(() => server.close());
const post = (asked: unknown, path = SHEETS) =>
  server.send({ method: "POST", path, headers, body: JSON.stringify(asked) });
const sha = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

test("a Sheet is frozen: its plan and PDF stay what they were, whatever becomes of the board", async () => {
  const first = await post({ paper: "letter", units: "inch", language: "de" });
  expect(first.status).toBe(201);
  const sheet = JSON.parse(first.text);
  expect(sheet).toMatchObject({ id: "1", boardVersion: 1, device: "this machine", engine: "1.2.3" });
  const pdf = await server.send({ path: `${SHEETS}/1/pdf` });
  const plan = await server.send({ path: `${SHEETS}/1/plan` });
  expect([sha(pdf.bytes), sha(plan.bytes)]).toEqual([sheet.pdfHash, sheet.planHash]);
  expect(pdf.text.slice(0, 5)).toBe("%PDF-");
  expect(pdf.headers["content-security-policy"]).toContain("sandbox");
  const read = readBoardFile(DEMO.text);
  if (!read.ok) throw new Error("the demo board cannot be read");
  expect(JSON.parse(plan.text)).toEqual(JSON.parse(JSON.stringify(planBuild(read.board))));

  const etag = String((await server.send({ path: `/api/boards/${DEMO.id}` })).headers.etag);
  const body = JSON.stringify({ ...JSON.parse(DEMO.text), name: "another name" });
  const path = `/api/boards/${DEMO.id}`;
  await server.send({ method: "PUT", path, headers: { ...headers, "if-match": etag }, body });
  expect(JSON.parse((await post({})).text)).toMatchObject({ id: "2", boardVersion: 2 });
  expect(JSON.parse((await post({ version: 1 })).text)).toMatchObject({ id: "3", boardVersion: 1 });
  expect(sha((await server.send({ path: `${SHEETS}/1/pdf` })).bytes)).toBe(sheet.pdfHash);
  const { sheets } = JSON.parse((await server.send({ path: SHEETS })).text);
  expect(sheets.map(({ id }: { id: string }) => id)).toEqual(["3", "2", "1"]);
  expect(JSON.parse((await server.send({ path: `${SHEETS}/1` })).text)).toEqual(sheet);
});

test.each([
  [{ paper: "a0" }, 422],
  [{ version: 0 }, 422],
  [{ version: 99 }, 404],
  [{ papers: "a4" }, 422],
  [[], 422],
])("%j makes no Sheet: %i", async (asked, status) => {
  expect((await post(asked)).status).toBe(status);
});

test.each(["9", "..%2f1", "x"])("there is no Sheet %s", async (sheet) => {
  for (const file of ["", "/pdf", "/plan"])
    expect((await server.send({ path: `${SHEETS}/${sheet}${file}` })).status).toBe(404);
});

test.each([
  ["busy", "Many Sheets are being made"],
  ["too-long", "was given up"],
] as const)("no Sheet because of %s is a 503 that says so", async (kind, words) => {
  const now = () => new Date("2026-04-11T09:00:00Z");
  const routes = sheetRoutes(server.shop, now, async () => ({ kind }));
  const init = { method: "POST", headers, body: "{}" };
  const answer = await routes.request(`/${DEMO.id}/sheets`, init);
  expect(answer.status).toBe(503);
  expect(answer.headers.get("content-type")).toBe("application/problem+json");
  expect(await answer.json()).toMatchObject({ reason: kind, detail: expect.stringContaining(words) });
});
