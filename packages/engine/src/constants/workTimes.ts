import type { Sourced } from "./Sourced";

export type Experience = "first" | "some" | "trade";
export type SpreadKind = "seal" | "laminate" | "fill" | "gloss" | "box" | "repair";

/** Mixing and pouring one cup, and working one kilogram of it out, by a trade glasser alone. */
export const SPREAD_TIMES: Readonly<
  Record<SpreadKind, { readonly cupS: Sourced; readonly perKgS: Sourced }>
> = {
  seal: { cupS: practice(120), perKgS: practice(900) },
  laminate: { cupS: practice(120), perKgS: practice(1200) },
  fill: { cupS: practice(90), perKgS: practice(600) },
  gloss: { cupS: practice(90), perKgS: practice(600) },
  box: { cupS: practice(180), perKgS: practice(900) },
  repair: { cupS: practice(180), perKgS: practice(1800) },
};

/** How many times as long as a trade hand, in wet work and the like, and with a sander. */
export const EXPERIENCE: Readonly<Record<Experience, { readonly work: Sourced; readonly sanding: Sourced }>> =
  {
    trade: { work: practice(1), sanding: practice(1) },
    some: { work: practice(1.5), sanding: practice(2) },
    first: { work: practice(2.2), sanding: practice(4) },
  };

/** A second pair of hands spreads this much as fast as one; a third finds no room at the board. */
export const TWO_PEOPLE_SPREAD: Sourced = practice(1.6);

/** The most resin that should stand mixed in one cup, by kind of resin: more runs hot before it is spread. */
export const MOST_IN_CUP_KG: Readonly<Record<"peroxide" | "two-part" | "sunlight", Sourced>> = {
  peroxide: practice(0.5),
  "two-part": practice(0.4),
  sunlight: practice(1),
};

/** Below this a cup is not worth mixing: what clings to it and to the brush is too large a share. */
export const LEAST_IN_CUP_KG: Sourced = practice(0.05);

function practice(value: number): Sourced {
  return { value, source: "common-practice" };
}
