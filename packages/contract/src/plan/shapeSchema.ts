import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();

const outlinePoint = z.object({ fromTailM: number, leftM: number, rightM: number });

const profilePoint = z.object({
  fromTailM: number,
  fromTailTapeM: number,
  thicknessM: number,
  rockerM: number,
  apexM: number,
});

const symmetry = z.object({
  worstM: number,
  worstFromTailM: number,
  rmsM: number,
  centrelineShiftM: number,
  centrelineShiftLowM: number,
  centrelineShiftHighM: number,
  centrelineSkewRad: number,
  centrelineSkewLowRad: number,
  centrelineSkewHighRad: number,
});

const reading = z.object({
  path: z.string(),
  fromTailM: number,
  readM: number,
  residualM: number,
  suspect: z.boolean(),
  wouldFitM: number,
});

const shape = z.object({
  lengthM: number,
  lengthTapeM: number,
  widthMaxM: number,
  widthMaxFromTailM: number,
  widths: z.array(z.object({ id: z.enum(["tail-12-in", "nose-12-in"]), fromTailM: number, widthM: number })),
  thicknessMaxM: number,
  thicknessMaxFromTailM: number,
  noseRockerM: number,
  tailRockerM: number,
  volumeM3: number,
  volumeLowM3: number,
  volumeHighM3: number,
  planAreaM2: number,
  deckAreaM2: number,
  bottomAreaM2: number,
  endAreaM2: number,
  centreOfVolume: z.object({ fromTailM: number, leftM: number, upM: number }),
  notch: z.object({ widthM: number, depthM: number }).nullable(),
  outline: z.array(outlinePoint),
  profile: z.array(profilePoint),
  symmetry,
  readings: z.array(reading),
  wouldHelp: z.array(z.object({ fromTailM: number, sdM: number })),
});

export const shapeSchema: Mirrors<NonNullable<Plan["shape"]>, typeof shape> = shape;
