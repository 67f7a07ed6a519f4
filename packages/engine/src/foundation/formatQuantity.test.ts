import { describe, expect, it } from "vitest";
import { formatLength } from "./formatLength";
import { formatQuantity } from "./formatQuantity";
import {
  angle,
  area,
  arealMass,
  count,
  density,
  duration,
  fraction,
  length,
  mass,
  temperature,
  volume,
} from "./quantity";

const SHOWN = [
  [length(1.778), "5'10\"", "1778 mm"],
  [length(1.7907), "5'10 1/2\"", "1791 mm"],
  [length(0.6096), "2'0\"", "610 mm"],
  [length(0.28575), "11 1/4 in", "286 mm"],
  [length(0.0125), "1/2 in", "12.5 mm"],
  [length(-0.0131), "-1/2 in", "-13.1 mm"],
  [length(0.28575, "fine"), "11 1/4 in", "285.8 mm"],
  [length(0.287, "coarse"), "11 1/4 in", "287 mm"],
  [length(0.00025), "0.25 mm", "0.25 mm"],
  [length(0.000085), "85 µm", "85 µm"],
  [length(0), "0 in", "0 mm"],
  [length(-1e-12), "0 in", "0 mm"],
  [area(1.234), "13.3 ft²", "1.23 m²"],
  [area(0.0055), "8.5 in²", "55.0 cm²"],
  [volume(0.0324), "32.4 L", "32.4 L"],
  [volume(4.23e-6), "4.2 mL", "4.2 mL"],
  [mass(0.0046), "4.6 g", "4.6 g"],
  [mass(0.31), "310 g", "310 g"],
  [mass(3.056), "3.06 kg (6 lb 11.8 oz)", "3.06 kg"],
  [arealMass(0.1356), "4.0 oz/yd²", "136 g/m²"],
  [density(48.06), "3.00 lb/ft³", "48 kg/m³"],
  [temperature(293.15), "68 °F (20 °C)", "20 °C"],
  [temperature(273.1), "32 °F (0 °C)", "0 °C"],
  [angle(0.0596), "3.4°", "3.4°"],
  [duration(45), "45 s", "45 s"],
  [duration(1500), "25 min", "25 min"],
  [duration(7800), "2 h 10 min", "2 h 10 min"],
  [duration(86400), "24 h", "24 h"],
  [duration(259200), "3 d", "3 d"],
  [fraction(0.015), "1.5 %", "1.5 %"],
  [fraction(0.55), "55 %", "55 %"],
  [count(3), "3", "3"],
] as const;

describe("formatQuantity", () => {
  it.each(SHOWN)("shows %j as %s or %s", (quantity, inch, mm) => {
    expect(formatQuantity(quantity, "inch")).toBe(inch);
    expect(formatQuantity(quantity, "mm")).toBe(mm);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses to show %d", (value) => {
    expect(() => formatQuantity(length(value), "mm")).toThrow(RangeError);
    expect(() => formatLength(value, { units: "inch", denominator: 16 })).toThrow(RangeError);
  });
});
