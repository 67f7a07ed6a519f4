/**
 * A number with what it measures. Inside the engine every value is SI; the dimension says how a person should see it.
 * Conversions live in `units.ts`, text in `formatQuantity.ts` and `parseQuantity.ts`, and nowhere else.
 */
export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "mass"
  | "arealMass"
  | "density"
  | "temperature"
  | "angle"
  | "duration"
  | "flow"
  | "fraction"
  | "count";

export interface Quantity {
  readonly dimension: Dimension;
  /** SI: m, m², m³, kg, kg/m², kg/m³, K, rad, s, m³/s, 1, 1. */
  readonly value: number;
  /** How finely a person should see it; `fine` shows tenths of a millimetre or 1/32 in. */
  readonly grain?: "coarse" | "normal" | "fine";
}

/** Which of the two systems of length a person reads in. */
export type Units = "inch" | "mm";

export const length = (value: number, grain?: Quantity["grain"]): Quantity => make("length", value, grain);
export const area = (value: number): Quantity => make("area", value);
export const volume = (value: number): Quantity => make("volume", value);
export const mass = (value: number): Quantity => make("mass", value);
export const arealMass = (value: number): Quantity => make("arealMass", value);
export const density = (value: number): Quantity => make("density", value);
export const temperature = (value: number): Quantity => make("temperature", value);
export const angle = (value: number, grain?: Quantity["grain"]): Quantity => make("angle", value, grain);
export const duration = (value: number): Quantity => make("duration", value);
export const flow = (value: number): Quantity => make("flow", value);
export const fraction = (value: number): Quantity => make("fraction", value);
export const count = (value: number): Quantity => make("count", value);

function make(dimension: Dimension, value: number, grain?: Quantity["grain"]): Quantity {
  return grain === undefined ? { dimension, value } : { dimension, value, grain };
}
