import { describe, expect, test } from "vitest";
import { clampZoom, MOST_ZOOM, middleOf, rolledTo, zoomByKey } from "./zoomSteps";

describe("the zoom of a drawing", () => {
  test("plus and minus undo each other, nought is the whole, and other keys are not ours", () => {
    expect(zoomByKey(zoomByKey(2, "+") ?? 0, "-")).toBeCloseTo(2, 12);
    expect(zoomByKey(1, "=")).toBe(zoomByKey(1, "+"));
    expect(zoomByKey(5, "0")).toBe(1);
    expect(zoomByKey(5, "a")).toBeNull();
  });

  test("is never smaller than whole, and ends", () => {
    expect(zoomByKey(1, "-")).toBe(1);
    expect(zoomByKey(MOST_ZOOM, "+")).toBe(MOST_ZOOM);
    expect(clampZoom(0.2)).toBe(1);
  });

  test("what stood in the middle stands there still, unless an edge comes in", () => {
    const before = { at: 300, seen: 400, all: 1000 };
    const after = { seen: 400, all: 1500 };
    const at = rolledTo(middleOf(before), after);
    expect(middleOf({ at, ...after })).toBeCloseTo(middleOf(before), 12);
    expect(rolledTo(0.05, after)).toBe(0);
    expect(rolledTo(0.99, after)).toBe(1100);
    expect(rolledTo(0.5, { seen: 400, all: 300 })).toBe(0);
  });
});
