import { gzipSync } from "node:zlib";
import { DEMO_BOARDS } from "@lapline/contract";
import { expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

const ID = DEMO_BOARDS[0]?.id ?? "";
const send = (server: TestServer, body: string | Uint8Array, more = {}) =>
  server.send({
    method: "POST",
    path: "/api/archive",
    headers: { "content-type": "application/jsonl", ...more },
    body,
  });

async function fill(server: TestServer): Promise<void> {
  const bytes = Buffer.concat([
    Buffer.from("ffd8ffe000104a46494600010100000100010000ffc0000b080015002501011100", "hex"),
    Buffer.alloc(300_000, 9),
  ]);
  await server.shop.photos.add({ boardId: ID, bytes: [bytes], device: "phone" });
  const [plan, pdf] = [Buffer.from("{}"), Buffer.from("%PDF-1.7")];
  await server.shop.sheets.issue({ boardId: ID, boardVersion: 1, plan, pdf, device: "phone" });
}

test("the whole shop goes out and into an empty one, byte for byte, and into no other", async () => {
  const [one, other] = [await startTestServer(), await startTestServer()];
  await fill(one);
  const archive = await one.send({ path: "/api/archive" });
  expect(archive.headers["content-disposition"]).toContain("attachment");
  expect((await send(other, archive.bytes)).status).toBe(204);
  expect((await other.send({ path: "/api/archive" })).text).toBe(archive.text);
  expect(await other.shop.check()).toEqual([]);
  expect((await send(other, archive.bytes)).status).toBe(409);
  expect((await send(one, archive.bytes)).status).toBe(409);
  await Promise.all([one.close(), other.close()]);
});

test("what is no whole copy is refused, and the shop stays as it was", async () => {
  const [one, other] = [await startTestServer(), await startTestServer()];
  await fill(one);
  const { text } = await one.send({ path: "/api/archive" });
  const before = (await other.send({ path: "/api/archive" })).text;
  const statuses = [
    (await send(other, text.slice(0, -200))).status,
    (await send(other, text.slice(0, 5000))).status,
    (await send(other, text.replaceAll(`"${ID}"`, '"../etc"'))).status,
    (await send(other, "")).status,
    (await send(other, Buffer.from([0xff, 0xfe, 0x00]))).status,
    (await send(other, gzipSync(text), { "content-encoding": "gzip" })).status,
    (await send(other, gzipSync("0".repeat(50_000_000)))).status,
    (await send(other, "0".repeat(17_000_000))).status,
    (await send(other, `[${"[".repeat(1_000_000)}`)).status,
    (await send(other, text, { "content-type": "application/zip" })).status,
  ];
  expect(statuses).toEqual([422, 422, 422, 422, 422, 415, 422, 422, 422, 415]);
  expect((await other.send({ path: "/api/archive" })).text).toBe(before);
  await Promise.all([one.close(), other.close()]);
});
