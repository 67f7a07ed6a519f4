import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const numberOrNull = number.nullable();

const markPoint = z.object({
  fromTailM: number,
  fromTailTapeM: number,
  fromCrotchTapeM: numberOrNull,
  fromCentrelineM: number,
  fromStringerM: number,
  fromRailM: number,
  toRailM: number,
  at: z.object({ xM: number, yM: number }),
});

const worth = z.object({
  baseEndRadPerM: number,
  trailingAcrossRadPerM: number,
  trailingAlongRadPerM: number,
  noseEndRadPerM: number,
});

const rounding = z.object({
  id: z.enum(["inch", "mm"]),
  stepM: number,
  byMarksRad: number,
  byStringRad: number,
});

const corner = z.object({
  id: z.enum(["rear-inner", "rear-outer", "front-outer", "front-inner"]),
  xM: number,
  yM: number,
});

const box = z.object({
  lengthM: number,
  widthM: number,
  depthM: number,
  behindTrailingM: number,
  slide: z.object({ backM: number, forwardM: number }).nullable(),
  rearFromTailM: number,
  rearFromTailTapeM: number,
  frontFromTailM: number,
  frontFromTailTapeM: number,
  corners: z.array(corner),
});

const mark = z.object({
  id: z.string(),
  fin: z.string(),
  side: z.enum(["left", "right", "centre"]),
  baseM: number,
  toeRad: number,
  toeOverBaseM: number,
  cantRad: number,
  bottomTiltRad: number,
  twistRad: number,
  trueCantRad: number,
  aimBesideNoseM: number,
  aimBeyondNoseM: numberOrNull,
  trailing: markPoint,
  leading: markPoint,
  worth,
  rounding: z.array(rounding),
  foamUnderM: numberOrNull,
  box: box.nullable(),
  depthM: numberOrNull,
  sweepRad: numberOrNull,
  foil: z.object({ kind: z.enum(["flat-inside", "symmetric"]), thicknessRatio: numberOrNull }).nullable(),
});

export const markSchema: Mirrors<NonNullable<Plan["finset"]>["marks"][number], typeof mark> = mark;
