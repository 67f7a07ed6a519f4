import type { Units } from "@lapline/engine";

export type PadDimension = "length" | "angle" | "mass" | "film";

/** What has been pressed on the pad so far. */
export interface PadValue {
  /** Whole feet, in front of inches; nothing where none were pressed. */
  readonly feet: string;
  /** Digits, with a point where one was pressed. */
  readonly digits: string;
  /** Parts of an inch, in 32nds. */
  readonly ticks: number;
  readonly unit: string;
}

export type PadKey =
  | { readonly kind: "digit"; readonly digit: string }
  | { readonly kind: "point" | "back" }
  | { readonly kind: "fraction"; readonly ticks: number }
  | { readonly kind: "unit"; readonly unit: string };

export const TICKS_PER_INCH = 32;

/** A tape's fractions as keys; pressed one after the other they add up. */
export const FRACTION_KEYS = [
  { name: "1/2", ticks: 16 },
  { name: "1/4", ticks: 8 },
  { name: "1/8", ticks: 4 },
  { name: "1/16", ticks: 2 },
] as const;

/** Unit keys, the one that stands without being pressed first. */
export function padUnits(dimension: PadDimension, units: Units): readonly string[] {
  if (dimension === "angle") return ["deg"];
  if (dimension === "film") return ["µm", "mm"];
  if (dimension === "mass") return units === "inch" ? ["g", "kg", "lb"] : ["g", "kg"];
  return units === "inch" ? ["in", "ft", "mm"] : ["mm", "cm"];
}

/** Nothing pressed yet. */
export const emptyPad = (unit: string): PadValue => ({ feet: "", digits: "", ticks: 0, unit });
