import { createHash } from "node:crypto";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { MOST_BENCH_PHOTOS } from "../src/photoRoutes";
import { startSharedServer } from "./startSharedServer";
import { startTestServer, type TestServer } from "./startTestServer";

const BOARD = `/api/boards/${DEMO_BOARDS[0]?.id}`;
// The first bytes as ISO/IEC 10918-1, ISO/IEC 15948 and RFC 9649 have them, of 37 by 21 pixels; what follows is not looked at.
const HEADS = {
  "image/jpeg": "ffd8ffe000104a46494600010100000100010000ffc0000b080015002501011100",
  "image/png": "89504e470d0a1a0a0000000d494844520000002500000015080600000001",
  "image/webp": "52494646240000005745425056503820180000003001009d012a25001500",
};
const photo = (type: keyof typeof HEADS, filler = 5000) =>
  Buffer.concat([Buffer.from(HEADS[type].padEnd(64, "0"), "hex"), Buffer.alloc(filler, type)]);

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());
const post = (body: Uint8Array | string, type = "image/jpeg", path = `${BOARD}/photos`, more = {}) =>
  server.send({ method: "POST", path, headers: { "content-type": type, ...more }, body });
const list = async () => JSON.parse((await server.send({ path: `${BOARD}/photos` })).text).photos;
const files = () => readdir(join(server.folder, "shop", "content"), { recursive: true });

test.each(Object.keys(HEADS) as (keyof typeof HEADS)[])(
  "%s is kept as it is, once, and can run nothing",
  async (type) => {
    const bytes = photo(type);
    const first = await post(bytes, "application/octet-stream");
    expect(first.status).toBe(201);
    const hash = createHash("sha256").update(bytes).digest("hex");
    expect(JSON.parse(first.text)).toMatchObject({ hash, type, sizeBytes: bytes.length });
    expect((await post(bytes)).status).toBe(200);
    expect((await list()).filter((each: { hash: string }) => each.hash === hash)).toHaveLength(1);
    const got = await server.send({ path: String(first.headers.location) });
    expect(Buffer.from(got.bytes).equals(bytes)).toBe(true);
    expect(got.headers).toMatchObject({
      "content-type": type,
      "x-content-type-options": "nosniff",
      etag: `"${hash}"`,
    });
    expect(got.headers["content-disposition"]).toMatch(/^inline; filename="[a-z0-9-]+\.(?:jpg|png|webp)"$/);
    expect(got.headers["content-security-policy"]).toMatch(/^default-src 'none'.*sandbox/);
    expect(got.headers["cache-control"]).toContain("immutable");
    const again = await server.send({
      path: String(first.headers.location),
      headers: { "if-none-match": `"${hash}"` },
    });
    expect(again.status).toBe(304);
  },
);

test.each([
  [
    "a drawing that could run",
    '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>',
    "image/svg+xml",
  ],
  ["a page", "<!doctype html><script>1</script>", "image/png"],
  ["another kind of picture", "GIF89a\x01\0\x01\0", "image/gif"],
  ["a board file", DEMO_BOARDS[0]?.text ?? "", "image/jpeg"],
  ["a packed folder", Buffer.from(`504b0304${"00".repeat(60)}`, "hex"), "image/jpeg"],
  ["half a head", Buffer.from("ffd8", "hex"), "image/jpeg"],
  [
    "a sound in the same frame",
    Buffer.from(`52494646${"24000000"}57415645${"00".repeat(40)}`, "hex"),
    "image/webp",
  ],
  ["nothing", "", "image/jpeg"],
])("%s is no photo, whatever it is called, and leaves nothing", async (_, body, type) => {
  const before = await files();
  expect((await post(body, type)).status).toBe(415);
  expect(await files()).toEqual(before);
});

test("a photo that is too large, or packed, or of no board is refused and leaves nothing", async () => {
  const before = await files();
  expect((await post(photo("image/jpeg", 20_000_000))).status).toBe(413);
  expect(
    (await post(photo("image/jpeg"), "image/jpeg", undefined, { "content-encoding": "gzip" })).status,
  ).toBe(415);
  expect((await post(photo("image/jpeg"), "image/jpeg", "/api/boards/none/photos")).status).toBe(404);
  expect(await files()).toEqual(before);
});

/** ISO/IEC 10918-1, B.2.2: lines first, then samples a line. */
const jpegOf = (wide: number, high: number) => {
  const bytes = photo("image/jpeg");
  bytes.writeUInt16BE(high, 25);
  bytes.writeUInt16BE(wide, 27);
  return bytes;
};

test.each([
  [8160, 6120, 201],
  [16_384, 3000, 201],
  [8000, 6251, 422],
  [16_385, 100, 422],
  [65_535, 65_535, 422],
  [0, 100, 415],
  [100, 0, 415],
])("a small file that says it is %i by %i pixels: %i", async (wide, high, status) => {
  const before = await files();
  const answer = await post(jpegOf(wide, high));
  expect(answer.status).toBe(status);
  if (status === 201) return;
  if (status === 422) {
    expect(JSON.parse(answer.text)).toMatchObject({ reason: "pixels", wide, high });
    expect(JSON.parse(answer.text).detail).toContain("at most 50 million");
  }
  expect(await files()).toEqual(before);
});

test("devices at the bench add so many photos to a board, a keeper more", async () => {
  const shared = await startSharedServer();
  const [phone, laptop] = [await shared.pair("Phone", "bench"), await shared.pair("Laptop", "keeper")];
  const boardId = String(DEMO_BOARDS[0]?.id);
  for (let i = 0; i < MOST_BENCH_PHOTOS; i++) {
    const bytes = [photo("image/png", 100 + i)];
    expect(await shared.shop.photos.add({ boardId, bytes, device: "Phone" })).toMatchObject({ kind: "kept" });
  }
  const ask = (cookie: string, body: Uint8Array) =>
    shared.ask(
      { method: "POST", path: `${BOARD}/photos`, body, headers: { "content-type": "image/png" } },
      cookie,
    );
  const refused = await ask(phone, photo("image/png", 5000));
  expect(refused.status).toBe(403);
  expect(JSON.parse(refused.text)).toMatchObject({ reason: "enough-photos" });
  expect(JSON.parse(refused.text).detail).toContain("200 photos");
  expect((await ask(laptop, photo("image/png", 5000))).status).toBe(201);
  await shared.close();
});

test.each(["..%2f..%2fsecret.txt", "%2e%2e", "0".repeat(64), "a", `${"0".repeat(63)}/`])(
  "nothing is handed out as %s",
  async (hash) => {
    const answer = await server.send({ path: `${BOARD}/photos/${hash}` });
    expect(answer.status).toBe(404);
    expect(answer.headers["content-type"]).toBe("application/problem+json");
  },
);
