import { readFileSync } from "node:fs";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildOpenApi, httpCalls } from "@lapline/contract";
import { openShop } from "@lapline/store";
import { Validator } from "@seriousme/openapi-schema-validator";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openAccess } from "../src/access/Access";
import { createApp } from "../src/createApp";
import { startTestServer, type TestServer } from "./startTestServer";

const SCHEMAS = ["lapline-board-1.schema.json", "lapline-plan-1.schema.json"];
const committed = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../contract/schemas/${name}`, import.meta.url), "utf8")) as Record<
    string,
    unknown
  >;

let server: TestServer;
beforeAll(async () => {
  server = await startTestServer();
});
afterAll(() => server.close());

// Against the OpenAPI Initiative's own schema of version 3.1, through a general validator.
test("the description is a valid OpenAPI document, with the two schemas beside it", async () => {
  const validator = new Validator();
  for (const name of SCHEMAS) await validator.addSpecRef(committed(name), name);
  const result = await validator.validate(committed("lapline-http-1.openapi.json"));
  expect(result).toMatchObject({ valid: true });
  expect(validator.version).toBe("3.1");
});

test("it is handed out as it is committed", async () => {
  const { text } = await server.send({ path: "/api/openapi.json" });
  expect(JSON.parse(text)).toEqual(committed("lapline-http-1.openapi.json"));
  expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(buildOpenApi())));
  for (const name of SCHEMAS)
    expect(JSON.parse((await server.send({ path: `/api/${name}` })).text)).toEqual(committed(name));
});

test("every route is described, and nothing else is", async () => {
  const folder = await mkdtemp(join(tmpdir(), "lapline-routes-"));
  const now = () => new Date("2026-04-11T09:00:00Z");
  const shop = await openShop({ folder, engine: "1.2.3", now, report: () => undefined });
  const access = openAccess(shop, now, null);
  const pass = async (_: unknown, next: () => Promise<void>) => next();
  const app = createApp({
    shop,
    web: new Map(),
    version: "1.2.3",
    guards: [pass, pass],
    access,
    report: () => undefined,
  });
  const routed = app.routes
    .filter(({ method, path }) => method !== "ALL" && path.startsWith("/api"))
    .map(({ method, path }) => `${method.toLowerCase()} ${path.replace(/:(\w+)/g, "{$1}")}`);
  const described = httpCalls.map(({ method, path }) => `${method} ${path}`);
  expect([...new Set(routed)].sort()).toEqual([...described].sort());
  await shop.close();
  await rm(folder, { recursive: true });
});
