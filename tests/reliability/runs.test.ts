import { beforeAll, expect, test } from "vitest";
import { buildFirst } from "../buildFirst";
import { loadRun } from "./loadRun";
import { mutateRun } from "./mutateRun";

beforeAll(() => buildFirst("cli", "web"));

// How long answers take is for the harness to say: `npm run reliability`.
test("no made-up or mutated request brings a 500 or the server down", async () => {
  const { wrong, isAlive, requests, statuses } = await mutateRun({ requests: 300, seed: 8 });
  expect(wrong.filter((each) => !each.endsWith(" ms"))).toEqual([]);
  expect({ isAlive, requests }).toEqual({ isAlive: true, requests: 300 });
  expect(Object.keys(statuses).length).toBeGreaterThan(5);
});

test("devices that listen and write at once lose nothing", async () => {
  const { writes, refused, events } = await loadRun({ devices: 5, writesPerSecond: 20, seconds: 2 });
  expect({ writes, refused }).toEqual({ writes: 40, refused: 0 });
  expect(events).toBeGreaterThan(40);
});
