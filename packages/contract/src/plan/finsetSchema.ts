import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";
import { markSchema } from "./markSchema";
import { verifyPlanSchema } from "./verifySchema";

const number = z.number();
const numberOrNull = number.nullable();
const sidesRule = z.enum(["average", "rail", "centreline"]);

const diagonalStart = z.enum(["nose", "tail", "crotch"]);

const diagonal = z.object({
  id: z.enum(["nose-trailing", "nose-leading", "tail-trailing", "tail-leading"]),
  from: diagonalStart,
  leftM: number,
  rightM: number,
  leftTapeM: number,
  rightTapeM: number,
  differM: number,
  acrossWorthRatio: number,
  alongWorthRatio: number,
});

const pair = z.object({
  id: z.string(),
  differM: number,
  leftFromRailM: number,
  rightFromRailM: number,
  leftFromCentrelineM: number,
  rightFromCentrelineM: number,
  diagonals: z.array(diagonal),
});

const pairCompared = z.object({
  id: z.string(),
  leftFromRailM: number,
  rightFromRailM: number,
  leftFromStringerM: number,
  rightFromStringerM: number,
  leftToeRad: number,
  rightToeRad: number,
  leftMovesM: number,
  rightMovesM: number,
  fromStringerDifferM: number,
  fromRailDifferM: number,
});

const clearance = z.object({
  id: z.string(),
  foamBesideM: numberOrNull,
  toRailM: number,
  toStringerM: numberOrNull,
  toNextM: numberOrNull,
  next: z.string().nullable(),
  bowUnderBaseM: number,
});

const leashPlug = z.object({
  side: z.enum(["left", "right"]),
  fromTailM: number,
  fromTailTapeM: number,
  fromCrotchTapeM: numberOrNull,
  fromCentrelineM: number,
  toRailM: number,
  toStringerM: numberOrNull,
  diameterM: numberOrNull,
  depthM: numberOrNull,
  foamUnderM: numberOrNull,
  toBoxM: numberOrNull,
  box: z.string().nullable(),
  boxBeneath: z.string().nullable(),
  foamToBoxM: numberOrNull,
  mostDepthM: numberOrNull,
  patchDiameterM: numberOrNull,
  cureBeforeLoadS: number,
  pullTestN: number,
  pullTestMassKg: number,
});

const correction = z.object({
  end: z.enum(["none", "trailing", "leading", "both", "unknown"]),
  alongM: number,
  trailingAcrossM: number,
  leadingAcrossM: number,
  cantRad: number,
});

const asSet = z.object({
  id: z.string(),
  on: z.enum(["foam", "laminate", "fill"]).nullable(),
  trailingErrorM: numberOrNull,
  leadingErrorM: numberOrNull,
  toeErrorRad: numberOrNull,
  cantErrorRad: numberOrNull,
  withinTolerance: z.boolean(),
  trailingAlongM: numberOrNull,
  trailingAcrossM: numberOrNull,
  leadingAlongM: numberOrNull,
  leadingAcrossM: numberOrNull,
  correction,
});

const asSetPair = z.object({
  id: z.string(),
  trailingDifferM: numberOrNull,
  leadingDifferM: numberOrNull,
  alongDifferM: numberOrNull,
  toeDifferRad: numberOrNull,
  withinTolerance: z.boolean(),
});

const finset = z.object({
  asymmetryM: number,
  sides: sidesRule,
  boxes: z.enum(["before-glass", "after-laminate", "after-fill", "glassed-on"]),
  toleranceM: number,
  line: z.object({
    atTailM: number,
    atNoseM: number,
    skewRad: number,
    noseFromTailM: number,
    crotchFromTailM: numberOrNull,
    fromTailBy: z.enum(["tape", "straight"]),
    fromTailOf: z.enum(["tips", "crotch"]),
  }),
  marks: z.array(markSchema),
  pairs: z.array(pair),
  sidesCompared: z.array(z.object({ id: sidesRule, asymmetryM: number, pairs: z.array(pairCompared) })),
  recommendedSides: sidesRule,
  clearances: z.array(clearance),
  leashPlug: leashPlug.nullable(),
  asSet: z.array(asSet),
  asSetPairs: z.array(asSetPair),
  verify: verifyPlanSchema,
});

export const finsetSchema: Mirrors<NonNullable<Plan["finset"]>, typeof finset> = finset;
