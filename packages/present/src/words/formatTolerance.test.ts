import { expect, test } from "vitest";
import { formatTolerance } from "./formatTolerance";

test("a millimetre stays one for a reader of inches; what an inch tape can show is in inches", () => {
  expect(formatTolerance(0.001, { units: "inch", language: "en" })).toBe("1.0 mm");
  expect(formatTolerance(0.0005, { units: "inch", language: "en" })).toBe("0.50 mm");
  expect(formatTolerance(0.0127, { units: "inch", language: "en" })).toBe("1/2 in");
  expect(formatTolerance(0.0127, { units: "mm", language: "en" })).toBe("12.7 mm");
});
