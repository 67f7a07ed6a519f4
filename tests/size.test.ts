import { beforeAll, expect, test } from "vitest";
import { measureFirstLoads } from "../scripts/size";
import { buildFirst } from "./buildFirst";

beforeAll(() => buildFirst("web"));

test("no page needs more script than its limit, by itself and with what plans for it", () => {
  const loads = measureFirstLoads();
  expect(loads.map(({ name }) => name)).toEqual(["the Shed", "a board"]);
  for (const { kb, limitKb, withPlanKb, withPlanLimitKb } of loads) {
    expect(kb).toBeGreaterThan(20);
    expect(kb).toBeLessThanOrEqual(limitKb);
    // The engine is in neither page, and in the thread whole.
    expect(withPlanKb - kb).toBeGreaterThan(100);
    expect(withPlanKb).toBeLessThanOrEqual(withPlanLimitKb);
  }
});
