import { formatDecimal } from "./formatDecimal";
import { formatLength } from "./formatLength";
import type { Quantity, Units } from "./quantity";
import {
  celsiusFromKelvin,
  degreesFromRad,
  fahrenheitFromKelvin,
  KG_M2_PER_OUNCE_YD2,
  KG_M3_PER_POUND_FT3,
  KG_PER_OUNCE,
  KG_PER_POUND,
  M2_PER_SQUARE_FOOT,
  M2_PER_SQUARE_INCH,
  M3_PER_CUBIC_FOOT,
  OUNCES_PER_POUND,
  S_PER_DAY,
  S_PER_HOUR,
  S_PER_MINUTE,
} from "./units";

type Grain = NonNullable<Quantity["grain"]>;

/**
 * A quantity as a person should see it, in the system of length they read in.
 *
 * Declared conventions: lengths by the tape (`formatLength`; coarse 1/8 in or whole mm, normal 1/16 in, fine 1/32 in or
 * tenths of a mm), but below 1 mm in both systems as `0.25 mm`, and below 0.1 mm as `85 µm`, because a film of resin has no
 * tick on a tape. Resin is weighed in grams everywhere; from 1 kg on the inch system adds pounds and ounces, and it adds
 * degrees Celsius to Fahrenheit, because data sheets give those. Volumes are in litres in both.
 * @throws RangeError where the value is not a finite number
 */
export function formatQuantity(quantity: Quantity, units: Units): string {
  const { dimension, value, grain = "normal" } = quantity;
  if (!Number.isFinite(value)) throw new RangeError(`a ${dimension} to be shown must be a finite number`);
  return FORMATS[dimension](value, grain, units);
}

const FORMATS: Record<Quantity["dimension"], (value: number, grain: Grain, units: Units) => string> = {
  length: lengthText,
  area: areaText,
  volume: volumeText,
  mass: massText,
  arealMass: (value, grain, units) =>
    units === "inch"
      ? `${formatDecimal(value / KG_M2_PER_OUNCE_YD2, decimals(grain, 0, 1, 2))} oz/yd²`
      : `${formatDecimal(value * 1000, decimals(grain, 0, 0, 1))} g/m²`,
  density: (value, grain, units) =>
    units === "inch"
      ? `${formatDecimal(value / KG_M3_PER_POUND_FT3, decimals(grain, 1, 2, 3))} lb/ft³`
      : `${formatDecimal(value, decimals(grain, 0, 0, 1))} kg/m³`,
  temperature: temperatureText,
  angle: (value, grain) => `${formatDecimal(degreesFromRad(value), decimals(grain, 0, 1, 2))}°`,
  duration: durationText,
  flow: (value, _, units) =>
    units === "inch"
      ? `${formatDecimal((value * S_PER_MINUTE) / M3_PER_CUBIC_FOOT, 0)} cfm`
      : `${formatDecimal(value * S_PER_HOUR, 0)} m³/h`,
  fraction: fractionText,
  count: (value, grain) => formatDecimal(value, grain === "coarse" || Number.isInteger(value) ? 0 : 2),
};

function decimals(grain: Grain, coarse: number, normal: number, fine: number): number {
  return grain === "coarse" ? coarse : grain === "fine" ? fine : normal;
}

const DENOMINATORS = { coarse: 8, normal: 16, fine: 32 } as const;

function lengthText(valueM: number, grain: Grain, units: Units): string {
  const size = Math.abs(valueM);
  const isNought = size < 0.5e-7;
  if (isNought || size >= 0.001)
    return formatLength(isNought ? 0 : valueM, { units, denominator: DENOMINATORS[grain] });
  if (size >= 0.0001) return `${formatDecimal(valueM * 1e3, decimals(grain, 1, 2, 2))} mm`;
  return `${formatDecimal(valueM * 1e6, size < 1e-5 ? 1 : 0)} µm`;
}

function areaText(valueM2: number, grain: Grain, units: Units): string {
  const isSmall = Math.abs(valueM2) < 0.01;
  if (units === "inch") {
    if (isSmall) return `${formatDecimal(valueM2 / M2_PER_SQUARE_INCH, decimals(grain, 0, 1, 2))} in²`;
    return `${formatDecimal(valueM2 / M2_PER_SQUARE_FOOT, decimals(grain, 0, 1, 2))} ft²`;
  }
  if (isSmall) return `${formatDecimal(valueM2 * 1e4, decimals(grain, 0, 1, 2))} cm²`;
  return `${formatDecimal(valueM2, decimals(grain, 1, 2, 3))} m²`;
}

function volumeText(valueM3: number, grain: Grain): string {
  if (Math.abs(valueM3) >= 0.001) return `${formatDecimal(valueM3 * 1000, decimals(grain, 0, 1, 2))} L`;
  const isSmall = Math.abs(valueM3) < 100e-6;
  return `${formatDecimal(valueM3 * 1e6, isSmall ? decimals(grain, 0, 1, 2) : 0)} mL`;
}

/** From here on a mass is read in kilograms. */
const KILOGRAMS_FROM_KG = 2;
/** From here on a mass read coarsely is in whole kilograms. */
const WHOLE_FROM_KG = 10;
/** From here on the inch system adds pounds and ounces. */
const POUNDS_FROM_KG = 1;

function massText(valueKg: number, grain: Grain, units: Units): string {
  const size = Math.abs(valueKg);
  const metric =
    size >= KILOGRAMS_FROM_KG
      ? `${formatDecimal(valueKg, decimals(grain, size < WHOLE_FROM_KG ? 1 : 0, 2, 3))} kg`
      : `${formatDecimal(valueKg * 1000, size < 0.1 ? decimals(grain, 0, 1, 2) : decimals(grain, 0, 0, 1))} g`;
  return units === "inch" && size >= POUNDS_FROM_KG ? `${metric} (${poundsText(valueKg, grain)})` : metric;
}

function poundsText(valueKg: number, grain: Grain): string {
  if (grain === "coarse") return `${formatDecimal(valueKg / KG_PER_POUND, 0)} lb`;
  const tenthsOfOunce = Math.round((Math.abs(valueKg) / KG_PER_OUNCE) * 10);
  const pounds = Math.floor(tenthsOfOunce / (OUNCES_PER_POUND * 10));
  const ounces = (tenthsOfOunce % (OUNCES_PER_POUND * 10)) / 10;
  return `${valueKg < 0 ? "-" : ""}${pounds} lb ${formatDecimal(ounces, 1)} oz`;
}

function temperatureText(temperatureK: number, grain: Grain, units: Units): string {
  const digits = decimals(grain, 0, 0, 1);
  const celsius = `${formatDecimal(celsiusFromKelvin(temperatureK), digits)} °C`;
  if (units === "mm") return celsius;
  return `${formatDecimal(fahrenheitFromKelvin(temperatureK), digits)} °F (${celsius})`;
}

/** Seconds up to a minute and a half, then minutes; hours and minutes to a day; whole hours to two; then days and hours. */
function durationText(valueS: number): string {
  const sign = valueS < 0 ? "-" : "";
  const size = Math.abs(valueS);
  if (size < 1.5 * S_PER_MINUTE) return `${formatDecimal(valueS, 0)} s`;
  const minutes = Math.round(size / S_PER_MINUTE);
  if (minutes < S_PER_HOUR / S_PER_MINUTE) return `${sign}${minutes} min`;
  if (minutes < S_PER_DAY / S_PER_MINUTE)
    return sign + twoUnits(minutes, S_PER_HOUR / S_PER_MINUTE, "h", "min");
  const hours = Math.round(size / S_PER_HOUR);
  if (hours < 48) return `${sign}${hours} h`;
  return sign + twoUnits(hours, S_PER_DAY / S_PER_HOUR, "d", "h");
}

function twoUnits(total: number, ratio: number, large: string, small: string): string {
  const rest = total % ratio;
  const whole = `${Math.floor(total / ratio)} ${large}`;
  return rest === 0 ? whole : `${whole} ${rest} ${small}`;
}

function fractionText(value: number, grain: Grain): string {
  const percent = value * 100;
  const digits = Math.abs(percent) < 10 ? decimals(grain, 0, 1, 2) : decimals(grain, 0, 0, 1);
  return `${formatDecimal(percent, digits)} %`;
}
