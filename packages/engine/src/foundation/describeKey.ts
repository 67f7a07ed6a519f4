import type { Dimension, Quantity } from "./quantity";

/** Unit suffixes of the plan's keys, longest first: `lengthM`, `areaM2`, `massKg`, `angleRad`, `temperatureK`. */
const SUFFIXES: ReadonlyArray<readonly [suffix: RegExp, dimension: Dimension]> = [
  [/KgM3$/, "density"],
  [/KgM2$/, "arealMass"],
  [/M3$/, "volume"],
  [/M2$/, "area"],
  [/Kg$/, "mass"],
  [/Rad$/, "angle"],
  [/K$/, "temperature"],
  [/S$/, "duration"],
  [/(Ratio|Share)$/, "fraction"],
  [/M$/, "length"],
];

/** The number under a key of the plan as a quantity, by the unit that ends its name; a count where there is none. */
export function describeKey(key: string, value: number): Quantity {
  const found = SUFFIXES.find(([suffix]) => suffix.test(key));
  const dimension = found?.[1] ?? "count";
  return dimension === "length" || dimension === "angle"
    ? { dimension, value, grain: "fine" }
    : { dimension, value };
}
