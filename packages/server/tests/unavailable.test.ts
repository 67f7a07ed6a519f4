import { DEMO_BOARDS } from "@lapline/contract";
import { StoreUnavailableError } from "@lapline/store";
import { expect, test, vi } from "vitest";
import { startTestServer } from "./startTestServer";

test.each([
  ["full", 507, "The disk is full"],
  ["read-only", 503, "can only be read"],
  ["away", 503, "cannot be reached"],
] as const)("a store that is %s: %i, in plain words, and reading goes on", async (reason, status, words) => {
  const server = await startTestServer();
  const write = vi.spyOn(server.shop.boards, "write").mockRejectedValue(new StoreUnavailableError(reason));
  const body = DEMO_BOARDS[0]?.text ?? "";
  const headers = { "content-type": "application/json" };
  const answer = await server.send({ method: "PUT", path: "/api/boards/new", headers, body });
  expect(answer.status).toBe(status);
  expect(answer.headers["content-type"]).toBe("application/problem+json");
  expect(JSON.parse(answer.text)).toMatchObject({ state: reason, status });
  expect(JSON.parse(answer.text).detail).toContain(words);
  expect((await server.send({ path: `/api/boards/${DEMO_BOARDS[0]?.id}` })).status).toBe(200);
  write.mockRestore();
  expect((await server.send({ method: "PUT", path: "/api/boards/new", headers, body })).status).toBe(201);
  await server.close();
});
