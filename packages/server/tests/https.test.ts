import { generateKeyPairSync } from "node:crypto";
import { readFileSync } from "node:fs";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import type { IncomingMessage } from "node:http";
import { request } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { loadTls, TlsRefusedError } from "../src/index";
import { sendRequest } from "./sendRequest";
import { ADDRESS, cookieOf } from "./startSharedServer";
import { startTestServer, type TestServer } from "./startTestServer";

// Made with openssl for these tests alone, for names that are nobody's (RFC 2606); nothing trusts it.
const [CERT, KEY] = ["cert", "key"].map(
  (name) => new URL(`tls/test-only.${name}.pem`, import.meta.url).pathname,
);
if (CERT === undefined || KEY === undefined) throw new Error("there are two files");

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-tls-"));
});
afterAll(() => rm(folder, { recursive: true }));
const write = async (name: string, text: string) => {
  await writeFile(join(folder, name), text);
  return join(folder, name);
};

describe("a certificate and its key", () => {
  test("are taken where they belong together", async () => {
    expect((await loadTls(CERT, KEY)).certificate.checkHost("shop.example")).toBe("shop.example");
  });

  test.each<[string, () => Promise<[string, string]>, RegExp]>([
    [
      "a certificate that is not there",
      async () => [join(folder, "none.pem"), KEY],
      /none\.pem cannot be read: it is not there/,
    ],
    ["a key that is a folder", async () => [CERT, folder], /cannot be read: it is a folder/],
    [
      "a text for a certificate",
      async () => [await write("a.pem", "hello"), KEY],
      /a\.pem is no certificate in PEM form/,
    ],
    [
      "a broken certificate",
      async () => [await write("b.pem", "-----BEGIN CERTIFICATE-----\nAA\n-----END CERTIFICATE-----\n"), KEY],
      /b\.pem is no certificate/,
    ],
    ["a certificate for a key", async () => [CERT, CERT], /is no private key in PEM form/],
    ["another one's key", async () => [CERT, await write("other.pem", keyText())], /do not belong together/],
    [
      "a key behind a passphrase",
      async () => [CERT, await write("locked.pem", keyText("secret"))],
      /locked with a passphrase/,
    ],
  ])("%s is told", async (_, make, words) => {
    const [cert, key] = await make();
    const refused = await loadTls(cert, key).catch((error: unknown) => error);
    expect(refused).toBeInstanceOf(TlsRefusedError);
    expect(String(refused)).toMatch(words);
    expect(String(refused)).not.toContain("BEGIN EC");
  });
});

function keyText(passphrase?: string): string {
  const { privateKey } = generateKeyPairSync("ec", { namedCurve: "P-256" });
  const locked = passphrase === undefined ? {} : { cipher: "aes-256-cbc", passphrase };
  return privateKey.export({ type: "pkcs8", format: "pem", ...locked }).toString();
}

describe("the shop over HTTPS", () => {
  let server: TestServer;
  beforeAll(async () => {
    const now = () => new Date("2026-04-11T09:00:00Z");
    const share = { ports: [0], now, addresses: () => [ADDRESS], tls: await loadTls(CERT, KEY) };
    server = await startTestServer({ share });
  });
  afterAll(() => server.close());
  const port = () => server.shared?.port ?? 0;

  /** As a browser asks, which trusts nothing but this certificate and holds the name against it. */
  const ask = (path: string, { name = "shop.example", headers = {}, body = "" } = {}) =>
    new Promise<IncomingMessage & { text: string }>((resolve, reject) => {
      const sent = request(
        {
          host: "127.0.0.1",
          port: port(),
          path,
          method: body === "" ? "GET" : "POST",
          ca: readFileSync(CERT),
          servername: "shop.example",
          headers: {
            host: `${name}:${port()}`,
            connection: "close",
            "content-type": "application/json",
            ...headers,
          },
        },
        (response) => {
          let text = "";
          response.on("data", (part) => {
            text += part;
          });
          response.on("end", () => resolve(Object.assign(response, { text })));
        },
      );
      sent.on("error", reject);
      sent.end(body);
    });

  test("is shared under the certificate's names first, and says that it is safe from listeners", async () => {
    expect(server.shared?.addresses()).toEqual([
      `https://shop.example:${port()}`,
      `https://${ADDRESS}:${port()}`,
    ]);
    expect(JSON.parse((await ask("/api/access")).text)).toMatchObject({ secure: true, device: null });
  });

  test("gives its cookie to HTTPS alone", async () => {
    const code = server.shared?.makeCode("bench").code;
    const body = JSON.stringify({ code, name: "Phone" });
    const answer = await ask("/api/access", { body, headers: { origin: `https://shop.example:${port()}` } });
    expect(answer.statusCode).toBe(201);
    expect(answer.headers["set-cookie"]?.[0]).toMatch(
      /^__Host-lapline=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; Secure; SameSite=Strict$/,
    );
    const cookie = cookieOf(answer);
    expect((await ask("/api/boards", { headers: { cookie } })).statusCode).toBe(200);
    const plain = cookie.replace("__Host-", "");
    expect((await ask("/api/boards", { headers: { cookie: plain } })).statusCode).toBe(401);
  });

  test.each([
    ["shop.example", 200],
    ["glass.bay.example", 200],
    [ADDRESS, 200],
    ["shed.example", 403],
    ["localhost", 403],
    ["127.0.0.1", 403],
  ])("asked for %s it answers %i", async (name, status) => {
    expect((await ask("/api/access", { name })).statusCode).toBe(status);
  });

  test("takes no page that came without it", async () => {
    const headers = { origin: `http://shop.example:${port()}` };
    expect((await ask("/api/access", { headers, body: "{}" })).statusCode).toBe(403);
    await expect(sendRequest(port(), { path: "/" })).rejects.toThrow();
    expect((await ask("/api/access")).statusCode).toBe(200);
    expect(server.reports).toEqual([]);
  });

  test("leaves this machine's own page as it is", async () => {
    expect((await server.send({ path: "/api/boards" })).status).toBe(200);
  });
});
