import { type Dimension, parseQuantity } from "@lapline/engine";
import type { QuantityText } from "../file/QuantityText";

/**
 * A field where it was given, and no field where it was not: what a file leaves out stays out of the board, so that the
 * engine takes the default and says so.
 */
export function given<Key extends string, From, To>(
  key: Key,
  value: From | undefined,
  read: (value: From) => To,
): { readonly [K in Key]?: To } {
  return value === undefined ? {} : ({ [key]: read(value) } as { readonly [K in Key]?: To });
}

export const asIs = <T>(value: T): T => value;

export const lengthM = (text: QuantityText): number => inSi(text, "length");
export const massKg = (text: QuantityText): number => inSi(text, "mass");
export const angleRad = (text: QuantityText): number => inSi(text, "angle");
export const temperatureK = (text: QuantityText): number => inSi(text, "temperature");
export const durationS = (text: QuantityText): number => inSi(text, "duration");
export const densityKgM3 = (text: QuantityText): number => inSi(text, "density");
export const arealMassKgM2 = (text: QuantityText): number => inSi(text, "arealMass");
export const share = (text: QuantityText): number => inSi(text, "fraction");

/** Throws RangeError for text that the schema would have refused. */
function inSi(text: QuantityText, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new RangeError(parsed.message);
  return parsed.value;
}
