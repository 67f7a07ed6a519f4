import { describe, expect, test } from "vitest";
import { clampZoom, MOST_ZOOM, zoomByKey } from "./zoomSteps";

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
});
