import { formatDecimal } from "./formatDecimal";
import { say } from "./phrase";
import type { Dimension, Quantity } from "./quantity";
import type { Told } from "./stage";

/** Unit suffixes of the plan's keys, longest first: `lengthM`, `areaM2`, `massKg`, `angleRad`, `temperatureK`. */
const SUFFIXES: ReadonlyArray<readonly [suffix: RegExp, dimension: Dimension]> = [
  [/KgM3$/, "density"],
  [/KgM2$/, "arealMass"],
  [/M3S$/, "flow"],
  [/M3$/, "volume"],
  [/M2$/, "area"],
  [/Kg$/, "mass"],
  [/Rad$/, "angle"],
  [/K$/, "temperature"],
  [/S$/, "duration"],
  [/(Ratio|Share|Fraction)(Low|High)?$/, "fraction"],
  [/M$/, "length"],
];
const ANGLE_FOR_EACH_METRE = /RadPerM$/;
const FORCE = /[a-z]N$/;
const MM_PER_M = 1000;

/**
 * The number under a key of the plan as a quantity, by the unit that ends its name; a count where there is none. An angle for
 * each metre is told for each millimetre, which is what a mark is off by; a force in newtons in both systems.
 */
export function describeKey(key: string, value: number): Quantity | Told {
  if (ANGLE_FOR_EACH_METRE.test(key)) {
    const forEachMm: Quantity = { dimension: "angle", value: value / MM_PER_M, grain: "fine" };
    return say`${forEachMm} for each mm`;
  }
  if (FORCE.test(key)) return `${formatDecimal(value, 0)} N`;
  const found = SUFFIXES.find(([suffix]) => suffix.test(key));
  const dimension = found?.[1] ?? "count";
  return dimension === "length" || dimension === "angle"
    ? { dimension, value, grain: "fine" }
    : { dimension, value };
}
