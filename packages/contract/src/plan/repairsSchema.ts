import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();

const hollow = z.object({
  depthM: number,
  depthLowM: number,
  depthHighM: number,
  volumeM3: number,
  volumeLowM3: number,
  volumeHighM3: number,
  resinMassKg: number,
  resinMassLowKg: number,
  resinMassHighKg: number,
  baseMassKg: number.nullable(),
  hardenerMassKg: number.nullable(),
});

const layer = z.object({
  id: z.string(),
  cloth: z.string(),
  acrossM: number,
  areaM2: number,
  clothMassKg: number,
  resinMassKg: number,
});

const coat = z.object({
  id: z.string(),
  kind: z.enum(["repair", "repair-fill"]),
  resin: z.string(),
  resinMassKg: number,
  mixedMassKg: number,
  hardenerRatio: number.nullable(),
  baseMassKg: number.nullable(),
  hardenerMassKg: number.nullable(),
  hardenerVolumeM3: number.nullable(),
});

const repair = z.object({
  id: z.string(),
  entry: z.string(),
  face: z.enum(["deck", "bottom"]),
  side: z.enum(["left", "right"]),
  shows: z.enum(["shine", "weave", "glass", "foam"]),
  fromTailM: number,
  fromCentrelineM: number,
  sizeM: number,
  featherM: number,
  dryS: number,
  hollow: hollow.nullable(),
  layers: z.array(layer),
  fillAcrossM: number,
  coats: z.array(coat),
  done: z.boolean(),
});

export const repairSchema: Mirrors<NonNullable<Plan["repairs"]>[number], typeof repair> = repair;
