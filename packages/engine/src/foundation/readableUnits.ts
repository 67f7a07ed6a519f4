import type { Dimension } from "./quantity";
import {
  KG_M2_PER_OUNCE_YD2,
  KG_M3_PER_POUND_FT3,
  KG_PER_OUNCE,
  KG_PER_POUND,
  kelvinFromCelsius,
  kelvinFromFahrenheit,
  M_PER_FOOT,
  M_PER_INCH,
  M_PER_YARD,
  M2_PER_SQUARE_FOOT,
  M2_PER_SQUARE_INCH,
  M2_PER_SQUARE_YARD,
  M3_PER_CUBIC_FOOT,
  M3_PER_CUBIC_INCH,
  M3_PER_US_FLUID_OUNCE,
  radFromDegrees,
  S_PER_DAY,
  S_PER_HOUR,
  S_PER_MINUTE,
} from "./units";

/** One unit that a person may write after a number. */
export interface ReadableUnit {
  /** As written, in any case; the first is how messages write it. */
  readonly names: readonly string[];
  readonly toSi: (value: number) => number;
  /** Units of one family may follow each other, larger first: `5 ft 10 in`. */
  readonly family?: "customary" | "metric" | "clock";
}

const INCH: ReadableUnit = {
  names: ["in", "inches", "inch", "in.", '"', "″", "”", "''", "′′", "’’"],
  toSi: (value) => value * M_PER_INCH,
  family: "customary",
};
const FOOT: ReadableUnit = {
  names: ["ft", "feet", "foot", "ft.", "'", "′", "’"],
  toSi: (value) => value * M_PER_FOOT,
  family: "customary",
};

/** The first units of a dimension are those a message offers. */
export const READABLE_UNITS: Readonly<Record<Dimension, readonly ReadableUnit[]>> = {
  length: [
    INCH,
    { names: ["mm", "millimetres", "millimeters"], toSi: (value) => value / 1000, family: "metric" },
    { names: ["cm", "centimetres", "centimeters"], toSi: (value) => value / 100, family: "metric" },
    FOOT,
    { names: ["m", "metres", "meters"], toSi: (value) => value, family: "metric" },
    { names: ["yd", "yards", "yard"], toSi: (value) => value * M_PER_YARD, family: "customary" },
    { names: ["µm", "μm", "um"], toSi: (value) => value / 1e6 },
  ],
  area: [
    unit(["m2", "m²", "m^2"], (value) => value),
    unit(["ft2", "ft²", "ft^2"], (value) => value * M2_PER_SQUARE_FOOT),
    unit(["in2", "in²", "in^2"], (value) => value * M2_PER_SQUARE_INCH),
    unit(["yd2", "yd²", "yd^2"], (value) => value * M2_PER_SQUARE_YARD),
    unit(["cm2", "cm²", "cm^2"], (value) => value / 1e4),
  ],
  volume: [
    unit(["L", "litres", "liters", "litre", "liter"], (value) => value / 1000),
    unit(["mL"], (value) => value / 1e6),
    unit(["cm3", "cm³", "cc"], (value) => value / 1e6),
    unit(["fl oz", "floz"], (value) => value * M3_PER_US_FLUID_OUNCE),
    unit(["m3", "m³"], (value) => value),
    unit(["ft3", "ft³"], (value) => value * M3_PER_CUBIC_FOOT),
    unit(["in3", "in³"], (value) => value * M3_PER_CUBIC_INCH),
  ],
  mass: [
    { names: ["g", "grams", "gram"], toSi: (value) => value / 1000, family: "metric" },
    { names: ["kg", "kilograms"], toSi: (value) => value, family: "metric" },
    {
      names: ["lb", "lbs", "pounds", "pound", "lb."],
      toSi: (value) => value * KG_PER_POUND,
      family: "customary",
    },
    { names: ["oz", "ounces", "ounce", "oz."], toSi: (value) => value * KG_PER_OUNCE, family: "customary" },
  ],
  arealMass: [
    unit(["g/m2", "g/m²", "g/m^2", "gsm"], (value) => value / 1000),
    unit(["oz/yd2", "oz/yd²", "oz/yd^2"], (value) => value * KG_M2_PER_OUNCE_YD2),
    unit(["kg/m2", "kg/m²", "kg/m^2"], (value) => value),
  ],
  density: [
    unit(["kg/m3", "kg/m³", "kg/m^3"], (value) => value),
    unit(["lb/ft3", "lb/ft³", "lb/ft^3", "lbs/ft3", "lbs/ft³"], (value) => value * KG_M3_PER_POUND_FT3),
    unit(["g/cm3", "g/cm³", "g/cm^3", "g/mL"], (value) => value * 1000),
  ],
  temperature: [
    unit(["C", "°C", "deg C", "celsius"], kelvinFromCelsius),
    unit(["F", "°F", "deg F", "fahrenheit"], kelvinFromFahrenheit),
  ],
  angle: [unit(["deg", "°", "degrees", "degree"], radFromDegrees)],
  duration: [
    { names: ["min", "minutes", "minute"], toSi: (value) => value * S_PER_MINUTE, family: "clock" },
    { names: ["h", "hours", "hour", "hr"], toSi: (value) => value * S_PER_HOUR, family: "clock" },
    { names: ["d", "days", "day"], toSi: (value) => value * S_PER_DAY, family: "clock" },
    { names: ["s", "seconds", "second", "sec"], toSi: (value) => value, family: "clock" },
  ],
  flow: [
    unit(["m3/h", "m³/h", "m^3/h"], (value) => value / S_PER_HOUR),
    unit(["cfm", "ft3/min", "ft³/min"], (value) => (value * M3_PER_CUBIC_FOOT) / S_PER_MINUTE),
  ],
  fraction: [unit(["%", "percent"], (value) => value / 100)],
  count: [],
};

/** Words for a dimension in a message, and one good example of it. */
export const DIMENSION_WORDS: Readonly<
  Record<Dimension, { readonly name: string; readonly example: string }>
> = {
  length: { name: "a length", example: "11 1/4 in" },
  area: { name: "an area", example: "1.2 m2" },
  volume: { name: "a volume", example: "20 mL" },
  mass: { name: "a mass", example: "1.8 kg" },
  arealMass: { name: "a cloth's mass by area", example: "4 oz/yd2" },
  density: { name: "a density", example: "48 kg/m3" },
  temperature: { name: "a temperature", example: "18 C" },
  angle: { name: "an angle", example: "6 deg" },
  duration: { name: "a time", example: "25 min" },
  flow: { name: "an air flow", example: "400 m3/h" },
  fraction: { name: "a share", example: "55 %" },
  count: { name: "a count", example: "2" },
};

/** What a number after feet means when nothing follows it: `5'10`. */
export const UNIT_AFTER_FEET = INCH;
export const isFoot = (candidate: ReadableUnit): boolean => candidate === FOOT;

function unit(names: readonly string[], toSi: (value: number) => number): ReadableUnit {
  return { names, toSi };
}
