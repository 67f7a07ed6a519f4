import { request } from "node:http";
import { DEMO_BOARDS } from "@lapline/contract";
import { StoreUnavailableError } from "@lapline/store";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { cookieOf, type SharedServer, startSharedServer } from "./startSharedServer";
import { startTestServer } from "./startTestServer";

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
const [DEMO] = DEMO_BOARDS;
if (DEMO === undefined) throw new Error("there is no demo board");
const JSON_HEADERS = { "content-type": "application/json" };
const BOARDS = { path: "/api/boards" };

let server: SharedServer;
beforeEach(async () => {
  server = await startSharedServer();
});
afterEach(() => server.close());

const reasonOf = ({ text }: { text: string }) => JSON.parse(text).reason;
/** A code that is not this one, of the same length. */
const wrong = (code: string | null) => String((Number(code) + 1) % 1e8).padStart(8, "0");

describe("who is let in over the local network", () => {
  test("nobody without a cookie, to the page alone", async () => {
    expect((await server.ask({ path: "/pair" })).text).toContain("first page");
    for (const path of ["/api/boards", "/api/health", "/api/changes", "/api/devices", "/api/nothing", "/api"])
      expect((await server.ask({ path })).status, path).toBe(401);
    const put = await server.ask({
      method: "PUT",
      path: "/api/boards/x",
      headers: JSON_HEADERS,
      body: DEMO.text,
    });
    expect(put.status).toBe(401);
    expect(await server.shop.boards.read("x")).toBeNull();
    const who = JSON.parse((await server.ask({ path: "/api/access" })).text);
    expect(who).toEqual({ here: false, shared: true, secure: false, device: null });
  });

  test("a device by the code that is shown, which no browser sends in an address", async () => {
    const { code, links } = server.shared.makeCode("bench");
    expect(code).toMatch(/^\d{8}$/);
    expect(links).toEqual([`http://${server.host}/pair#${code}`]);
    const answer = await server.typeIn(`${code?.slice(0, 4)} ${code?.slice(4)}`, " Phone  in the bay ");
    expect(answer.status).toBe(201);
    expect(JSON.parse(answer.text).device).toMatchObject({ name: "Phone in the bay", role: "bench" });
    expect((await server.ask(BOARDS, cookieOf(answer))).status).toBe(200);
    expect((await server.ask(BOARDS)).status).toBe(401);
  });

  test("by a cookie that no script reads, no other site sends, and only its hash is kept", async () => {
    const answer = await server.typeIn(server.shared.makeCode("bench").code);
    const [set] = answer.headers["set-cookie"] ?? [];
    expect(set).toMatch(/^lapline=[\w-]{43}; Max-Age=5184000; Path=\/; HttpOnly; SameSite=Strict$/);
    const [, token = ""] = cookieOf(answer).split("=");
    expect(Buffer.from(token, "base64url")).toHaveLength(32);
    expect(answer.text).not.toContain(token);
    const listed = await server.send({ path: "/api/devices" });
    expect(listed.text).toContain("Phone");
    expect(listed.text).not.toContain(token);
    const { readdir, readFile } = await import("node:fs/promises");
    for (const name of await readdir(`${server.folder}/shop`)) {
      const bytes = await readFile(`${server.folder}/shop/${name}`).catch(() => Buffer.alloc(0));
      expect(bytes.includes(token), name).toBe(false);
    }
    expect(server.reports.join("\n")).not.toContain(token);
  });

  test.each([
    ["a made-up one", `lapline=${"A".repeat(43)}`],
    ["none in it", "lapline="],
    ["the name meant for HTTPS", `__Host-lapline=${"A".repeat(43)}`],
    ["a question to the database", "lapline=' or 1=1 --"],
    ["very much", `lapline=${"A".repeat(10_000)}`],
  ])("not by a cookie with %s", async (_, cookie) => {
    await server.pair("Phone", "keeper");
    expect((await server.ask(BOARDS, cookie)).status).toBe(401);
  });

  test("as long as it is seen within 60 days, its cookie with it", async () => {
    const cookie = await server.pair("Phone", "bench");
    server.clock.ms += 59 * DAY_MS;
    const seen = await server.ask(BOARDS, cookie);
    expect(cookieOf(seen)).toBe(cookie);
    expect((await server.ask(BOARDS, cookie)).headers["set-cookie"]).toBeUndefined();
    server.clock.ms += 59 * DAY_MS;
    expect((await server.ask(BOARDS, cookie)).status).toBe(200);
    server.clock.ms += 60 * DAY_MS;
    expect((await server.ask(BOARDS, cookie)).status).toBe(401);
  });

  test("to read on, where the disk does not take that it was seen", async () => {
    const cookie = await server.pair("Phone", "bench");
    server.clock.ms += DAY_MS;
    const see = vi.spyOn(server.shop.devices, "see").mockRejectedValue(new StoreUnavailableError("full"));
    expect((await server.ask(BOARDS, cookie)).status).toBe(200);
    expect(see).toHaveBeenCalled();
  });

  test("not once it is revoked, whoever copied the cookie", async () => {
    const [phone, laptop] = [await server.pair("Phone", "bench"), await server.pair("Laptop", "keeper")];
    const { devices } = JSON.parse((await server.ask({ path: "/api/devices" }, laptop)).text);
    const [{ id }] = devices.filter(({ name }: { name: string }) => name === "Phone");
    const remove = () => server.ask({ method: "DELETE", path: `/api/devices/${id}` }, laptop);
    expect([(await remove()).status, (await remove()).status]).toEqual([204, 404]);
    expect((await server.ask(BOARDS, phone)).status).toBe(401);
    server.clock.ms += DAY_MS;
    expect((await server.ask(BOARDS, phone)).status).toBe(401);
    expect(JSON.parse((await server.ask({ path: "/api/access" }, phone)).text).device).toBeNull();
    expect((await server.ask(BOARDS, laptop)).status).toBe(200);
  });

  test("a name goes into what the device saves and writes down", async () => {
    const cookie = await server.pair("Phone in the bay", "bench");
    const put = await server.ask(
      { method: "PUT", path: "/api/boards/new", headers: JSON_HEADERS, body: DEMO.text },
      cookie,
    );
    expect(put.status).toBe(201);
    expect(await server.shop.boards.listVersions("new")).toMatchObject([{ device: "Phone in the bay" }]);
    const entry = { id: "e1", kind: "done", step: "prep", at: "2026-04-11T11:20" };
    await server.ask(
      { method: "POST", path: "/api/boards/new/journal", headers: JSON_HEADERS, body: JSON.stringify(entry) },
      cookie,
    );
    expect(await server.shop.journal.list("new")).toMatchObject([{ device: "Phone in the bay" }]);
  });
});

describe("a pairing code", () => {
  test("guessed wrong five times is locked for the right one too, until a new one is made at the machine", async () => {
    const { code } = server.shared.makeCode("bench");
    const answers = [];
    for (let i = 0; i < 5; i++) answers.push(await server.typeIn(wrong(code)));
    expect(answers.map(({ status }) => status)).toEqual([403, 403, 403, 403, 403]);
    expect(answers.map(reasonOf)).toEqual(["wrong", "wrong", "wrong", "wrong", "locked"]);
    expect(answers.map(({ text }) => JSON.parse(text).left)).toEqual([4, 3, 2, 1, undefined]);
    const right = await server.typeIn(code);
    expect([right.status, reasonOf(right)]).toEqual([403, "locked"]);
    expect(right.headers["set-cookie"]).toBeUndefined();
    expect(await server.shop.devices.list()).toEqual([]);
    const shown = JSON.parse((await server.send({ path: "/api/pairing" })).text);
    expect(shown.offer).toMatchObject({ state: "locked", code: null });
    expect((await server.typeIn(server.shared.makeCode("bench").code)).status).toBe(201);
  });

  test("guessed from many sides at once gives no more than five guesses", async () => {
    const { code } = server.shared.makeCode("keeper");
    const answers = await Promise.all(Array.from({ length: 20 }, () => server.typeIn(wrong(code))));
    expect(answers.filter((answer) => reasonOf(answer) === "wrong")).toHaveLength(4);
    expect(reasonOf(await server.typeIn(code))).not.toBe("wrong");
    expect(await server.shop.devices.list()).toEqual([]);
  });

  test("is refused to an address that was wrong ten times, whatever code is made, for ten minutes", async () => {
    for (let i = 0; i < 10; i++) await server.typeIn("00000000");
    const { code } = server.shared.makeCode("bench");
    const slow = await server.typeIn(code);
    expect([slow.status, slow.headers["retry-after"]]).toEqual([429, "600"]);
    server.clock.ms += 10 * MINUTE_MS;
    expect((await server.typeIn(server.shared.makeCode("bench").code)).status).toBe(201);
  });

  test("lets one device in, however many send it at once", async () => {
    const { code } = server.shared.makeCode("bench");
    const answers = await Promise.all(Array.from({ length: 8 }, () => server.typeIn(code)));
    expect(answers.filter(({ status }) => status === 201)).toHaveLength(1);
    expect(answers.filter((answer) => answer.status === 403 && reasonOf(answer) === "none")).toHaveLength(7);
    expect(await server.shop.devices.list()).toHaveLength(1);
  });

  test("runs out after five minutes, and with the next one", async () => {
    const { code } = server.shared.makeCode("bench");
    server.clock.ms += 5 * MINUTE_MS - 1;
    expect(JSON.parse((await server.send({ path: "/api/pairing" })).text).offer.code).toBe(code);
    server.clock.ms += 1;
    expect(reasonOf(await server.typeIn(code))).toBe("none");
    const [older, newer] = [server.shared.makeCode("keeper").code, server.shared.makeCode("bench").code];
    expect(reasonOf(await server.typeIn(older))).toBe("wrong");
    expect((await server.typeIn(newer)).status).toBe(201);
  });

  test("is not used up where the device could not be kept", async () => {
    const { code } = server.shared.makeCode("bench");
    const add = vi.spyOn(server.shop.devices, "add").mockRejectedValueOnce(new StoreUnavailableError("full"));
    expect((await server.typeIn(code)).status).toBe(507);
    add.mockRestore();
    expect((await server.typeIn(code)).status).toBe(201);
  });

  test("is not guessed, nor used up, by what is no name or no code", async () => {
    const { code } = server.shared.makeCode("bench");
    const bad = [
      "",
      " ",
      "a\nb",
      "a\u0007b",
      "a\u202eb",
      "a\u200bb",
      "\ud800",
      "x".repeat(41),
      7,
      null,
      ["a"],
      {},
    ];
    for (const name of bad)
      expect(reasonOf(await server.typeIn(code, name)), JSON.stringify(name)).toBe("name");
    expect(reasonOf(await server.typeIn(Number(code)))).toBe("wrong");
    expect((await server.typeIn(code, "x".repeat(40))).status).toBe(201);
  });

  test.each([
    ["too long", 413, `{"code":"${"1".repeat(5000)}"}`, "application/json"],
    ["a form of another page", 415, "code=1", "application/x-www-form-urlencoded"],
    ["text", 415, "{}", "text/plain"],
    ["no object", 400, "[]", "application/json"],
    ["null", 400, "null", "application/json"],
    ["broken off", 400, '{"code":', "application/json"],
  ])("that comes as %s is refused with %i", async (_, status, body, type) => {
    const sent = { method: "POST", path: "/api/access", headers: { "content-type": type }, body };
    expect((await server.ask(sent)).status).toBe(status);
  });

  test("is seen and made at this machine only, not by a keeper's device", async () => {
    const keeper = await server.pair("Laptop", "keeper");
    server.shared.makeCode("keeper");
    expect((await server.ask({ path: "/api/pairing" }, keeper)).status).toBe(403);
    const post = { method: "POST", path: "/api/pairing", headers: JSON_HEADERS, body: '{"role":"keeper"}' };
    expect((await server.ask(post, keeper)).status).toBe(403);
    expect((await server.send(post)).status).toBe(201);
    expect((await server.send({ ...post, body: '{"role":"owner"}' })).status).toBe(422);
    expect(
      (await server.send({ ...post, headers: { ...JSON_HEADERS, origin: "http://shed.example" } })).status,
    ).toBe(403);
  });
});

describe("a device at the bench", () => {
  test.each([
    ["DELETE", "/api/boards/x"],
    ["DELETE", "/api/boards/x/photos/abc"],
    ["POST", "/api/boards/x/bring-back"],
    ["POST", "/api/boards/x/versions/1/take-back"],
    ["GET", "/api/archive"],
    ["POST", "/api/archive"],
    ["PUT", "/api/shelf/prices/x"],
    ["PATCH", "/api/boards/x"],
    ["GET", "/api/devices"],
    ["GET", "/api/devices/"],
    ["GET", "/api/pairing"],
    ["HEAD", "/api/devices"],
    ["DELETE", "/api/devices/x"],
    ["PATCH", "/api/devices/x"],
    ["POST", "/api/pairing"],
    ["PUT", "/api/boards/x/versions/1"],
    ["PURGE", "/api/boards/x"],
  ])("may not %s %s", async (method, path) => {
    const cookie = await server.pair("Phone", "bench");
    const sent = /^P/.test(method) ? { method, path, headers: JSON_HEADERS, body: "{}" } : { method, path };
    expect((await server.ask(sent, cookie)).status).toBe(403);
  });

  test("may not revoke another, nor make itself a keeper", async () => {
    const phone = await server.pair("Phone", "bench");
    const [{ id = "" } = {}] = await server.shop.devices.list();
    const patch = {
      method: "PATCH",
      path: `/api/devices/${id}`,
      headers: JSON_HEADERS,
      body: '{"role":"keeper","name":"x"}',
    };
    expect((await server.ask(patch, phone)).status).toBe(403);
    expect((await server.send(patch)).status).toBe(204);
    expect(await server.shop.devices.list()).toMatchObject([{ name: "x", role: "bench" }]);
  });

  test("may read, and add versions and entries", async () => {
    const cookie = await server.pair("Phone", "bench");
    for (const path of ["/api/boards", `/api/boards/${DEMO.id}`, "/api/health", "/api/access"])
      expect((await server.ask({ path }, cookie)).status, path).toBe(200);
    const plan = { method: "POST", path: "/api/plan", headers: JSON_HEADERS, body: DEMO.text };
    expect((await server.ask(plan, cookie)).status).toBe(200);
  });
});

describe("an open event stream", () => {
  /** Opens it and waits for its first event; `ended` resolves when the server hangs up. */
  const listen = (cookie: string) =>
    new Promise<{ ended: Promise<void> }>((resolve, reject) => {
      const options = { host: "127.0.0.1", port: server.shared.port, path: "/api/changes" };
      const sent = request({ ...options, headers: { host: server.host, cookie } }, (response) => {
        const ended = new Promise<void>((end) => response.on("close", () => end()).on("error", () => end()));
        response.once("data", () => resolve({ ended }));
        void ended.then(() => reject(new Error("hung up before the first event")));
      });
      sent.on("error", reject);
      sent.end();
    });

  test("ends at once when its device is revoked, and goes on for the others", async () => {
    const [phone, other] = [await server.pair("Phone", "bench"), await server.pair("Other", "bench")];
    const [hears, stays] = [await listen(phone), await listen(other)];
    const devices = await server.shop.devices.list();
    const id = devices.find(({ name }) => name === "Phone")?.id ?? "";
    expect((await server.send({ method: "DELETE", path: `/api/devices/${id}` })).status).toBe(204);
    await hears.ended;
    let isEnded = false;
    void stays.ended.then(() => {
      isEnded = true;
    });
    expect((await server.ask(BOARDS, other)).status).toBe(200);
    expect(isEnded).toBe(false);
  });

  test("ends also where another program on the same shop revokes it", async () => {
    const phone = await server.pair("Phone", "bench");
    const hears = await listen(phone);
    const [{ id = "" } = {}] = await server.shop.devices.list();
    // The store's own call, without this server's doors.
    await server.shop.devices.revoke(id, "another program");
    await hears.ended;
  });

  test("ends where the device is revoked while it is looked up", async () => {
    const phone = await server.pair("Phone", "bench");
    const find = server.shop.devices.find;
    vi.spyOn(server.shop.devices, "find").mockImplementationOnce(async (hash) => {
      const device = await find(hash);
      await server.shop.devices.revoke(device?.id ?? "", "x");
      return device;
    });
    await expect(listen(phone).then(({ ended }) => ended)).rejects.toThrow(/hung up|hang up|ECONNRESET/);
  });
});

describe("what is addressed elsewhere or sent from elsewhere", () => {
  test.each(["shed.example", "127.0.0.1", "localhost", "192.168.7.21", "192.168.7.20.shed.example", ""])(
    "a request to %j is refused, cookie or not",
    async (name) => {
      const cookie = await server.pair("Phone", "keeper");
      const headers = { host: name === "" ? "" : `${name}:${server.shared.port}` };
      for (const path of ["/", "/api/boards", "/api/access"])
        expect([400, 403]).toContain((await server.ask({ path, headers }, cookie)).status);
    },
  );

  test.each(["1", "80", "", "abc"])("nor is another port taken for this one: %j", async (port) => {
    const headers = { host: `192.168.7.20:${port}` };
    expect([400, 403]).toContain((await server.ask({ path: "/", headers })).status);
  });

  test.each([
    "http://shed.example",
    "null",
    "https://192.168.7.20",
    "http://192.168.7.20:1",
    "http://192.168.7.20",
  ])("a page of %s neither writes nor reads nor pairs", async (origin) => {
    const cookie = await server.pair("Phone", "keeper");
    const put = {
      method: "PUT",
      path: "/api/boards/x",
      headers: { ...JSON_HEADERS, origin },
      body: DEMO.text,
    };
    expect((await server.ask(put, cookie)).status).toBe(403);
    expect((await server.ask({ path: "/api/boards", headers: { origin } }, cookie)).status).toBe(403);
    const { code } = server.shared.makeCode("bench");
    const pair = {
      method: "POST",
      path: "/api/access",
      headers: { ...JSON_HEADERS, origin },
      body: `{"code":"${code}","name":"x"}`,
    };
    expect((await server.ask(pair)).status).toBe(403);
    expect(await server.shop.boards.read("x")).toBeNull();
  });

  test("its own page writes", async () => {
    const cookie = await server.pair("Phone", "keeper");
    const headers = { ...JSON_HEADERS, origin: `http://${server.host}` };
    const put = { method: "PUT", path: "/api/boards/x", headers, body: DEMO.text };
    expect((await server.ask(put, cookie)).status).toBe(201);
  });

  test("this machine's own door takes no request for the shared address, and its visitors need no code", async () => {
    expect((await server.send({ path: "/api/boards", headers: { host: server.host } })).status).toBe(403);
    expect(JSON.parse((await server.send({ path: "/api/access" })).text)).toMatchObject({
      here: true,
      device: null,
    });
    const pair = { method: "POST", path: "/api/access", headers: JSON_HEADERS, body: "{}" };
    expect((await server.send(pair)).status).toBe(409);
  });
});

describe("devices", () => {
  test("are shown as what they are called, whatever that looks like", async () => {
    const name = '<img src=x onerror="alert(1)">';
    await server.pair(name, "bench");
    const answer = await server.send({ path: "/api/devices" });
    expect(answer.headers["content-type"]).toContain("application/json");
    expect(answer.headers["x-content-type-options"]).toBe("nosniff");
    expect(JSON.parse(answer.text).devices).toMatchObject([{ name }]);
  });

  test("are renamed by a keeper, to a name and not to another's", async () => {
    const keeper = await server.pair("Laptop", "keeper");
    await server.pair("Phone", "bench");
    const devices = await server.shop.devices.list();
    const id = devices.find(({ name }) => name === "Phone")?.id ?? "";
    const rename = (name: unknown, to = id) =>
      server.ask(
        {
          method: "PATCH",
          path: `/api/devices/${to}`,
          headers: JSON_HEADERS,
          body: JSON.stringify({ name }),
        },
        keeper,
      );
    expect((await rename("Bay")).status).toBe(204);
    expect((await rename("a\u0000b")).status).toBe(422);
    expect((await rename("laptop")).status).toBe(409);
    expect((await rename("This machine")).status).toBe(409);
    expect((await rename("Any", "nobody")).status).toBe(404);
    const listed = JSON.parse((await server.ask({ path: "/api/devices" }, keeper)).text).devices;
    expect(listed).toMatchObject([
      { name: "Bay", own: false },
      { name: "Laptop", own: true, role: "keeper" },
    ]);
  });
});

describe("a shop that is not shared", () => {
  let alone: Awaited<ReturnType<typeof startTestServer>>;
  beforeAll(async () => {
    alone = await startTestServer();
  });
  afterAll(() => alone.close());

  test("has no door but this machine's, and makes no codes", async () => {
    expect(alone.shared).toBeNull();
    expect(JSON.parse((await alone.send({ path: "/api/pairing" })).text)).toMatchObject({
      shared: false,
      offer: null,
    });
    const post = { method: "POST", path: "/api/pairing", headers: JSON_HEADERS, body: '{"role":"bench"}' };
    expect((await alone.send(post)).status).toBe(409);
  });
});
