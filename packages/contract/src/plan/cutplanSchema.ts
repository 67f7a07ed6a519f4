import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();

const cutOff = z.object({
  id: z.string(),
  fromStartM: number,
  lengthM: number,
  pieces: z.array(z.string()),
});

const placed = z.object({
  id: z.string(),
  piece: z.string(),
  part: z.enum(["whole", "left", "right"]),
  pattern: z.string(),
  cut: z.string(),
  from: z.enum(["roll", "offcut"]),
  fromStartM: number,
  fromEdgeM: number,
  lengthM: number,
  widthM: number,
  turnRad: number,
});

const seam = z.object({ id: z.string(), fromStringerM: number, overlapM: number, rollWidthM: number });

const clothCut = {
  id: z.string(),
  cloth: z.string(),
  widthM: number,
  lengthM: number,
  usedRatio: number,
  price: number.nullable(),
  cost: number.nullable(),
};

const roll = z.object({
  ...clothCut,
  cuts: z.array(cutOff),
  placed: z.array(placed),
  seams: z.array(seam),
});

const repairPatch = z.object({ id: z.string(), acrossM: number, areaM2: number, strips: number });

const repairCut = z.object({ ...clothCut, patches: z.array(repairPatch) });

const cutplan = z.object({ rolls: z.array(roll), repairs: z.array(repairCut) });

export const cutplanSchema: Mirrors<NonNullable<Plan["cutplan"]>, typeof cutplan> = cutplan;
