import { describe, expect, it } from "vitest";
import { findLeast, type Sample } from "./findLeast";

describe("the least of a dip", () => {
  const sample = (f: (x: number) => number, at: number): Sample => ({ at, value: f(at) });
  const least = (f: (x: number) => number, low: number, best: number, high: number) =>
    findLeast(f, [sample(f, low), sample(f, best), sample(f, high)], 1e-6);

  it.each([
    ["a parabola, exactly", (x: number) => (x - 0.31) ** 2 + 2, 0.2, 0.3, 0.5, 2],
    ["a cosine at π", (x: number) => Math.cos(x), 2, 3, 4, -1],
    ["a kink", (x: number) => Math.abs(x - 0.3017), 0, 0.3, 1, 0],
    ["a dip at the end of the stretch", (x: number) => x, 0, 0, 1, 0],
    ["a flat floor", (x: number) => Math.max(0, Math.abs(x - 0.5) - 0.1), 0, 0.5, 1, 0],
  ])("%s", (_name, f, low, best, high, expected) => {
    expect(least(f, low, best, high)).toBeCloseTo(expected, 5);
  });

  it("is never more than the least it was given", () => {
    const f = (x: number) => Math.sin(9 * x) + 0.2 * x;
    expect(least(f, 0, 0.55, 1)).toBeLessThanOrEqual(f(0.55));
  });
});
