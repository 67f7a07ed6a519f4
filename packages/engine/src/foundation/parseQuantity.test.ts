import { describe, expect, it } from "vitest";
import { parseQuantity } from "./parseQuantity";
import type { Dimension } from "./quantity";

const READ: ReadonlyArray<readonly [string, Dimension, number]> = [
  ["11 1/4 in", "length", 0.28575],
  ['1 1/8"', "length", 0.028575],
  ["5'10\"", "length", 1.778],
  ["5′10″", "length", 1.778],
  ["5’10”", "length", 1.778],
  ["5'10''", "length", 1.778],
  ["5'10", "length", 1.778],
  ["5'-10 1/2\"", "length", 1.7907],
  ["5 ft 10 1/2 in", "length", 1.7907],
  ["5ft10.5in", "length", 1.7907],
  ["5 Feet", "length", 1.524],
  ["11-1/4 in", "length", 0.28575],
  ["11½ in", "length", 0.2921],
  ["1⁄8 in", "length", 0.003175],
  ["⅞\u00a0in", "length", 0.022225],
  ["285 mm", "length", 0.285],
  ["28.5 cm", "length", 0.285],
  ["28,5 cm", "length", 0.285],
  ["0,125 in", "length", 0.003175],
  ["1.25 m", "length", 1.25],
  ["−1/8 in", "length", -0.003175],
  ["-3 mm", "length", -0.003],
  ["+3 mm", "length", 0.003],
  ["-0 mm", "length", 0],
  ["125 µm", "length", 0.000125],
  ["4 oz/yd2", "arealMass", 0.1356229899],
  ["136 g/m²", "arealMass", 0.136],
  ["48 kg/m3", "density", 48],
  ["3 lb/ft^3", "density", 48.05539012188],
  ["18 C", "temperature", 291.15],
  ["18 °C", "temperature", 291.15],
  ["-5 C", "temperature", 268.15],
  ["64 F", "temperature", 290.92777777778],
  ["6 deg", "angle", 0.1047197551],
  ["-6°", "angle", -0.1047197551],
  ["25 min", "duration", 1500],
  ["2 h", "duration", 7200],
  ["2 h 10 min", "duration", 7800],
  ["3 d", "duration", 259200],
  ["1.8 kg", "mass", 1.8],
  ["310g", "mass", 0.31],
  ["6 lb 11.5 oz", "mass", 3.04757373594],
  ["20 mL", "volume", 2e-5],
  ["1 fl oz", "volume", 2.95735296e-5],
  ["55 %", "fraction", 0.55],
  ["8%", "fraction", 0.08],
];

const REFUSED: ReadonlyArray<readonly [string, Dimension, number, string]> = [
  ["", "length", 0, "nothing was read"],
  ["11 1/4", "length", 6, "11 1/4 in (285.8 mm) or 11 1/4 mm (7/16 in)?"],
  ["11.25", "length", 5, "11.25 in (285.8 mm) or 11.25 mm (7/16 in)?"],
  ["18", "temperature", 2, "18 C or 18 F?"],
  ["0.55", "fraction", 4, "55 % or 0.55 %?"],
  ["2 h 30", "duration", 6, "30 min or 30 s?"],
  ["NaN in", "length", 0, "a number was expected"],
  ["Infinity mm", "length", 0, "a number was expected"],
  ["1e3 mm", "length", 1, '"e3" is not a unit'],
  ["3 kg", "length", 2, '"kg" is the unit of a mass'],
  ["4 oz", "arealMass", 2, "oz/yd2"],
  ["-3 g", "mass", 0, "cannot be negative"],
  ["-5 %", "fraction", 0, "cannot be negative"],
  ["1,450 mm", "length", 1, "could be 1450 or 1.450"],
  ["1/0 in", "length", 2, "nought below the bar"],
  ["1/ in", "length", 2, "missing under"],
  ["11. in", "length", 3, "missing behind"],
  ["7 5/4 in", "length", 2, "not less than one"],
  ["5'14\"", "length", 2, "not less than one ft"],
  ["5.5' 3\"", "length", 0, "should be whole"],
  ["10\" 5'", "length", 4, "cannot follow"],
  ["1 m 5 in", "length", 4, "cannot follow"],
  ["11 1/4 1/2 in", "length", 7, "a unit is missing before"],
  ["11 1/4 in (285 mm)", "length", 10, "a number was expected"],
  ["12 in\u001b[31m", "length", 5, "a number was expected"],
];

describe("parseQuantity", () => {
  it.each(READ)("reads %j as a %s", (text, dimension, expected) => {
    const result = parseQuantity(text, dimension);
    expect(result.ok ? result.value : result.message).toBeCloseTo(expected, 9);
  });

  it.each(REFUSED)("refuses %j as a %s at %i", (text, dimension, position, words) => {
    const result = parseQuantity(text, dimension);
    if (result.ok) throw new Error(`read as ${result.value}`);
    expect(result.position).toBe(position);
    expect(result.message).toContain(words);
    expect(result.message).not.toContain("\u001b");
  });
});
