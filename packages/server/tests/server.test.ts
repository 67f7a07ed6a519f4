import { connect } from "node:net";
import { DEMO_BOARDS } from "@lapline/contract";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { PortsTakenError, startServer } from "../src/index";
import { startTestServer, type TestServer } from "./startTestServer";

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());

describe("the web app", () => {
  test("is sent with a policy that keeps it to itself", async () => {
    const { status, headers, text } = await server.send({ path: "/" });
    expect(status).toBe(200);
    expect(text).toContain("first page");
    expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(headers["content-security-policy"]).toContain("default-src 'self'");
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers["cache-control"]).toBe("no-cache");
  });

  test("is not sent again where it is there already", async () => {
    const { headers } = await server.send({ path: "/" });
    const again = await server.send({ path: "/", headers: { "if-none-match": String(headers.etag) } });
    expect(again).toMatchObject({ status: 304, text: "" });
  });

  test("keeps a file whose name carries its content's hash", async () => {
    const { headers } = await server.send({ path: "/assets/app-1a2b.js" });
    expect(headers["content-type"]).toBe("text/javascript; charset=utf-8");
    expect(headers["cache-control"]).toContain("immutable");
  });

  test("opens on its first page from any of its own addresses", async () => {
    expect((await server.send({ path: "/boards/some-board" })).text).toContain("first page");
    expect((await server.send({ path: "/assets/gone.js" })).status).toBe(404);
  });

  test.each([
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/..%2fsecret.txt",
    "/%2e%2e/secret.txt",
    "/..\\secret.txt",
    "//secret.txt",
    "/assets/%2e%2e%2f%2e%2e%2fsecret.txt",
  ])("hands out nothing under %s", async (path) => {
    const answer = await server.send({ path });
    expect(answer.text).not.toContain("secret");
    expect([400, 404]).toContain(answer.status);
  });
});

describe("who may ask", () => {
  const boards = "/api/boards";
  const write = (headers: Record<string, string>) =>
    server.send({
      method: "PUT",
      path: `${boards}/asked`,
      headers: { "content-type": "application/json", ...headers },
      body: DEMO_BOARDS[0]?.text ?? "",
    });

  test.each(["localhost", "127.0.0.1", "[::1]", "LOCALHOST"])(
    "whoever names this machine %s",
    async (name) => {
      expect((await server.send({ path: boards, headers: { host: `${name}:${server.port}` } })).status).toBe(
        200,
      );
    },
  );

  test.each(["shed.example", "127.0.0.1", "localhost:1", "127.0.0.1.shed.example"])(
    "not %s",
    async (host) => {
      const answer = await server.send({ path: boards, headers: { host } });
      expect(answer.status).toBe(403);
      expect(answer.text).not.toContain('"boards"');
    },
  );

  test("a page of its own may write, and a program", async () => {
    const first = await write({ origin: `http://127.0.0.1:${server.port}` });
    expect(first.status).toBe(201);
    expect((await write({ "if-match": String(first.headers.etag) })).status).toBe(200);
  });

  test.each(["http://shed.example", "null", "https://127.0.0.1", "http://127.0.0.1:1"])(
    "a page of %s may not",
    async (origin) => {
      expect((await write({ origin })).status).toBe(403);
    },
  );
});

describe("the server", () => {
  test("says that it is well", async () => {
    expect(JSON.parse((await server.send({ path: "/api/health" })).text)).toEqual({
      status: "ok",
      version: "1.2.3",
    });
  });

  test.each(["/api", "/api/none", "/api/boards/a/b"])("knows no call %s", async (path) => {
    const answer = await server.send({ path });
    expect(answer.status).toBe(404);
    expect(answer.headers["content-type"]).toBe("application/problem+json");
  });

  test("lives on after bytes that are no request", async () => {
    for (const bytes of [
      "\0\0\0\0\r\n\r\n",
      "GET / HTTP/1.1\r\nHost: a b\r\n\r\n",
      "PUT /api/boards/a HTTP/1.1\r\n",
    ]) {
      await new Promise<void>((resolve) => {
        const socket = connect(server.port, "127.0.0.1", () => socket.end(bytes));
        socket.on("error", () => undefined);
        socket.on("close", () => resolve());
        socket.resume();
      });
    }
    expect((await server.send({ path: "/api/health" })).status).toBe(200);
    expect(server.reports).toEqual([]);
  });

  test("takes the next port where one is taken, and says so where none is left", async () => {
    const options = {
      shop: server.shop,
      webFolder: `${server.folder}/web`,
      version: "1.2.3",
      report: () => undefined,
    };
    const next = await startServer({ ...options, ports: [server.port, 0] });
    expect(next.port).not.toBe(server.port);
    await next.close();
    await expect(startServer({ ...options, ports: [server.port] })).rejects.toThrow(PortsTakenError);
  });

  test("stops at once, whoever still holds a connection", async () => {
    const own = await startTestServer();
    const hangUp = new Promise<void>((resolve) => {
      const socket = connect(own.port, "127.0.0.1", () => socket.write("PUT /api/boards/a HTTP/1.1\r\n"));
      socket.on("error", () => undefined);
      socket.on("close", () => resolve());
      socket.on("connect", () => void own.close());
    });
    await hangUp;
  });
});
