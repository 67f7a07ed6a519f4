import { createHash } from "node:crypto";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startTestServer, type TestServer } from "./startTestServer";

const BOARD = `/api/boards/${DEMO_BOARDS[0]?.id}`;
// The first bytes as ISO/IEC 10918-1, ISO/IEC 15948 and RFC 9649 have them; what follows is not looked at.
const HEADS = {
  "image/jpeg": "ffd8ffe000104a46494600010100000100010000",
  "image/png": "89504e470d0a1a0a0000000d49484452000000010000000108060000001f15c489",
  "image/webp": "524946462400000057454250565038201800000030010",
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

test.each(["..%2f..%2fsecret.txt", "%2e%2e", "0".repeat(64), "a", `${"0".repeat(63)}/`])(
  "nothing is handed out as %s",
  async (hash) => {
    const answer = await server.send({ path: `${BOARD}/photos/${hash}` });
    expect(answer.status).toBe(404);
    expect(answer.headers["content-type"]).toBe("application/problem+json");
  },
);
