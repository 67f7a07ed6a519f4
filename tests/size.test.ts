import { beforeAll, expect, test } from "vitest";
import { measureFirstLoads } from "../scripts/size";
import { buildFirst } from "./buildFirst";

beforeAll(() => buildFirst("web"));

test("no page needs more script than its limit before it shows a plan", () => {
  const loads = measureFirstLoads();
  expect(loads.map(({ name }) => name)).toEqual(["the Shed", "a board"]);
  for (const { kb, limitKb } of loads) {
    expect(kb).toBeGreaterThan(100);
    expect(kb).toBeLessThanOrEqual(limitKb);
  }
});
