import { computeSensitivity, walkSensitivity } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { DEMO_PLANS } from "./demoPlans";

function demoOf(id: string) {
  const demo = DEMO_PLANS.find((each) => each.id === id);
  if (demo === undefined) throw new Error(`no demo board ${id}`);
  return demo;
}

describe("computeSensitivity", () => {
  test("of a toe stated over the base is the change of asin(a / b), a tape's reading the first", () => {
    // Source: the definition of the sine. a = 6 mm over a base of b = 112 mm; a goes by 1 mm, b by a hundredth.
    const { board } = demoOf("six-four-tri");
    const found = computeSensitivity(board, "finset.marks[front-left].toeRad");
    expect(found.map(({ path }) => path)).toEqual(["fins.set[0].toe.over", "fins.set[0].base"]);
    expect(found[0]?.change).toBeCloseTo(Math.asin(7 / 112) - Math.asin(6 / 112), 9);
    expect(found[1]?.change).toBeCloseTo(Math.asin(6 / (112 * 1.01)) - Math.asin(6 / 112), 9);
  });

  test("of the stringer's wood is in proportion to its thickness", () => {
    // Source: m = V × density, V = thickness × side area.
    const { board, plan } = demoOf("six-four-tri");
    const found = computeSensitivity(board, "weight.stringerKg");
    const thickness = found.find(({ path }) => path === "blank.stringer.thickness");
    expect(thickness?.change).toBeCloseTo(0.01 * (plan.weight?.stringerKg ?? 0), 9);
    const sizes = found.map(({ change }) => Math.abs(change));
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  });

  test("gives way before each plan, so that a page stays quick", () => {
    const walk = walkSensitivity(demoOf("nine-two-long").board, "shape.lengthM");
    expect([walk.next().done, walk.next().done, walk.next().done]).toEqual([false, false, false]);
  });

  test("is empty for a place that is no number of the plan", () => {
    expect(computeSensitivity(demoOf("nine-two-long").board, "shape.nothing")).toEqual([]);
  });
});
