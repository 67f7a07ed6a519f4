import { httpCalls } from "@lapline/contract";
import { expect, test } from "vitest";
import { mayBench } from "./mayBench";

// Every call there is, so that a new one is the keeper's until somebody says here that it only adds.
test("a device at the bench may make these calls and no others", () => {
  const allowed = httpCalls
    .map(({ method, path }) => ({ method: method.toUpperCase(), path }))
    .filter(({ method, path }) => mayBench(method, path.replace(/\{(\w+)\}/g, "x")))
    .map(({ method, path }) => `${method} ${path}`);
  expect(allowed.filter((call) => !call.startsWith("GET "))).toEqual([
    "POST /api/plan",
    "POST /api/boards",
    "PUT /api/boards/{id}",
    "POST /api/boards/{id}/journal",
    "POST /api/boards/{id}/photos",
    "POST /api/boards/{id}/sheets",
  ]);
  const hidden = httpCalls.filter(({ method, path }) => method === "get" && !allowed.includes(`GET ${path}`));
  expect(hidden.map(({ path }) => path)).toEqual(["/api/archive", "/api/devices", "/api/pairing"]);
});
