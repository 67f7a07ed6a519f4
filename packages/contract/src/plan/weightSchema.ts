import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();

const stage = z.object({ id: z.string(), massKg: number, massLowKg: number, massHighKg: number });

const float = z.object({
  waterDensityKgM3: number,
  displacesKg: number,
  displacesLowKg: number,
  displacesHighKg: number,
  carriesKg: number,
  carriesLowKg: number,
  carriesHighKg: number,
  riderKg: number.nullable(),
  reserveKg: number.nullable(),
  reserveLowKg: number.nullable(),
  reserveHighKg: number.nullable(),
});

const weight = z.object({
  foamKg: number,
  foamLowKg: number,
  foamHighKg: number,
  stringerKg: number,
  stringerLowKg: number,
  stringerHighKg: number,
  clothKg: number,
  clothLowKg: number,
  clothHighKg: number,
  resinKg: number,
  resinLowKg: number,
  resinHighKg: number,
  fittingsKg: number,
  fittingsLowKg: number,
  fittingsHighKg: number,
  finishedKg: number,
  finishedLowKg: number,
  finishedHighKg: number,
  foamBy: z.enum(["scale", "volume"]),
  stringerVolumeM3: number,
  stages: z.array(stage),
  float,
});

export const weightSchema: Mirrors<NonNullable<Plan["weight"]>, typeof weight> = weight;

const byWeight = z.object({
  volumeM3: number,
  volumeLowM3: number,
  volumeHighM3: number,
  deckFullness: number.nullable(),
});

export const byWeightSchema: Mirrors<NonNullable<Plan["byWeight"]>, typeof byWeight> = byWeight;
