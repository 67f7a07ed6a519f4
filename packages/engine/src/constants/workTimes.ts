import { S_PER_HOUR } from "../foundation/units";
import type { Sourced } from "./Sourced";

export type Experience = "first" | "some" | "trade";
export type SpreadKind = "seal" | "laminate" | "fill" | "gloss" | "box" | "repair" | "repair-fill";

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
  "repair-fill": { cupS: practice(180), perKgS: practice(1800) },
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

/** Hands-on time by a trade hand: so much for the board, and so much for each square metre of the faces worked on. */
export interface StepWork {
  readonly fixedS: Sourced;
  readonly perM2S: Sourced;
  /** Which of the two factors of practice it goes by. */
  readonly skill: "work" | "sanding";
}

/** By kind of work; a six-foot board, about 1.45 m² of deck and bottom, takes a trade sander an hour and a half. */
export const STEP_WORK = {
  prep: { fixedS: practice(1800), perM2S: practice(0), skill: "work" },
  marking: { fixedS: practice(1200), perM2S: practice(0), skill: "work" },
  trim: { fixedS: practice(600), perM2S: practice(0), skill: "work" },
  masking: { fixedS: practice(900), perM2S: practice(0), skill: "work" },
  logos: { fixedS: practice(600), perM2S: practice(0), skill: "work" },
  pinline: { fixedS: practice(3600), perM2S: practice(0), skill: "work" },
  vent: { fixedS: practice(900), perM2S: practice(0), skill: "work" },
  laps: { fixedS: practice(900), perM2S: practice(0), skill: "work" },
  routing: { fixedS: practice(2400), perM2S: practice(0), skill: "work" },
  tacking: { fixedS: practice(2400), perM2S: practice(0), skill: "work" },
  plug: { fixedS: practice(600), perM2S: practice(0), skill: "work" },
  sanding: { fixedS: practice(0), perM2S: practice(3700), skill: "sanding" },
  wetSanding: { fixedS: practice(0), perM2S: practice(1800), skill: "sanding" },
  polishing: { fixedS: practice(0), perM2S: practice(1200), skill: "work" },
  repairDry: { fixedS: practice(600), perM2S: practice(0), skill: "work" },
  repairFeather: { fixedS: practice(1200), perM2S: practice(0), skill: "work" },
  repairSand: { fixedS: practice(1200), perM2S: practice(0), skill: "sanding" },
  rest: { fixedS: practice(0), perM2S: practice(0), skill: "work" },
  lastLook: { fixedS: practice(1200), perM2S: practice(0), skill: "work" },
} as const satisfies Record<string, StepWork>;

export type WorkId = keyof typeof STEP_WORK;

/** A face, and a coat on it, where the board's own are not known. */
export const REFERENCE_FACE_M2: Sourced = practice(0.7);
export const REFERENCE_COAT_KG: Sourced = practice(0.3);

/** Bare foam is left to dry so long before it is closed again. */
export const DRY_OUT_S: Sourced = practice(24 * S_PER_HOUR);

function practice(value: number): Sourced {
  return { value, source: "common-practice" };
}
