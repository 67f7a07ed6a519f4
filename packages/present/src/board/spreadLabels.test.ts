import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { spreadLabels } from "./spreadLabels";

const room = { gap: 5, from: 0, to: 100 };

describe("spreadLabels", () => {
  test("leaves labels that have room at their own marks", () => {
    expect(spreadLabels([10, 30, 80], room)).toEqual([10, 30, 80]);
  });

  test("parts two at one place evenly", () => {
    expect(spreadLabels([50, 50], room)).toEqual([47.5, 52.5]);
  });

  test("keeps order, gap and ends, whatever the marks", () => {
    const marks = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { maxLength: 20 });
    fc.assert(
      fc.property(marks, (list) => {
        const sorted = list.toSorted((a, b) => a - b);
        const placed = spreadLabels(sorted, room);
        expect(placed).toHaveLength(sorted.length);
        placed.forEach((at, i) => {
          expect(at).toBeGreaterThanOrEqual(-1e-9);
          expect(at).toBeLessThanOrEqual(100 + 1e-9);
          if (i > 0) expect(at - (placed[i - 1] ?? 0)).toBeGreaterThanOrEqual(5 - 1e-9);
        });
      }),
      { seed: 4021, numRuns: 300 },
    );
  });

  test("shrinks the gap evenly where they do not all fit", () => {
    const placed = spreadLabels([1, 2, 3, 4, 5], { gap: 50, from: 0, to: 100 });
    expect(placed).toEqual([0, 25, 50, 75, 100]);
  });
});
