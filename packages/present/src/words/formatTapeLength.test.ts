import { expect, test } from "vitest";
import { formatBareTapeLength, formatTapeLength } from "./formatTapeLength";

test.each([
  [0.1524, "6 in", "152.5 mm"],
  [0.1519, "5 31/32 in", "152 mm"],
  [0.15163, "5 31/32 in", "151.5 mm"],
  [0.292, "11 1/2 in", "292 mm"],
  [0, "0 in", "0 mm"],
  [-0.0127, "-1/2 in", "-12.5 mm"],
  [1.778, `5'10"`, "1778 mm"],
])("%d m is %s or %s on a tape", (valueM, inch, mm) => {
  expect(formatTapeLength(valueM, { units: "inch", language: "en" })).toBe(inch);
  expect(formatTapeLength(valueM, { units: "mm", language: "en" })).toBe(mm);
  expect(formatBareTapeLength(valueM, { units: "mm", language: "en" })).toBe(mm.replace(" mm", ""));
});
