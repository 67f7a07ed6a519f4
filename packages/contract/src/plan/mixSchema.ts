import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const numberOrNull = number.nullable();

const clock = z.object({
  potGelS: number,
  potGelLowS: number,
  potGelHighS: number,
  spreadByS: number,
  pullTapeS: numberOrNull,
  pullTapeLowS: numberOrNull,
  pullTapeHighS: numberOrNull,
  trimFromS: numberOrNull,
  trimFromLowS: numberOrNull,
  trimFromHighS: numberOrNull,
  trimUntilS: numberOrNull,
  trimUntilLowS: numberOrNull,
  trimUntilHighS: numberOrNull,
  flipS: numberOrNull,
  flipLowS: numberOrNull,
  flipHighS: numberOrNull,
  recoatFromS: numberOrNull,
  recoatFromLowS: numberOrNull,
  recoatFromHighS: numberOrNull,
  recoatUntilS: numberOrNull,
  recoatUntilLowS: numberOrNull,
  recoatUntilHighS: numberOrNull,
  sandableS: numberOrNull,
  sandableLowS: numberOrNull,
  sandableHighS: numberOrNull,
  fullS: numberOrNull,
  fullLowS: numberOrNull,
  fullHighS: numberOrNull,
});

const cup = z.object({
  mixedMassKg: number,
  baseMassKg: number,
  hardenerMassKg: number,
  hardenerVolumeM3: number,
  hardenerDrops: numberOrNull,
  waxVolumeM3: number,
  tintMassKg: number,
  tintedBaseKg: numberOrNull,
  fromTailM: numberOrNull,
  toM: numberOrNull,
  mixAtS: number,
  spreadS: number,
});

const heat = z.object({
  boundK: number,
  boundLowK: number,
  boundHighK: number,
  coolingS: number,
  coolingLowS: number,
  coolingHighS: number,
  warning: z.enum(["mild", "warm", "hot"]),
});

const vapour = z.object({
  styreneKg: number,
  overS: number,
  needs: z.array(z.object({ id: z.string(), name: z.string(), limitPpm: number, freshAirM3S: number })),
});

const resin = z.object({
  id: z.string(),
  name: z.string(),
  kind: z.enum(["peroxide", "two-part", "sunlight"]),
  exponent: numberOrNull,
  activationEnergyJMol: numberOrNull,
  points: z.array(
    z.object({
      temperatureK: number,
      doseRatio: number,
      gelS: number,
      fittedS: numberOrNull,
      isOdd: z.boolean(),
    }),
  ),
  exposures: z.array(
    z.object({ uvIndex: number, exposureS: number, exposureLowS: number, exposureHighS: number }),
  ),
});

const coat = z.object({
  id: z.string(),
  resin: z.string(),
  temperatureK: number,
  resinTemperatureK: number,
  hardenerRatio: numberOrNull,
  startedAt: z.string().nullable(),
  paceRatio: numberOrNull,
  paceLowRatio: numberOrNull,
  paceHighRatio: numberOrNull,
  clock: clock.nullable(),
  gelBand: z.array(z.object({ temperatureK: number, gelS: number, gelLowS: number, gelHighS: number })),
  cups: z.array(cup),
  masterBatch: z.object({ baseMassKg: number, tintMassKg: number }).nullable(),
  heat: heat.nullable(),
  vapour: vapour.nullable(),
});

const mix = z.object({
  dewPointK: numberOrNull,
  airLowK: number,
  airHighK: number,
  resins: z.array(resin),
  coats: z.array(coat),
});

export const mixSchema: Mirrors<NonNullable<Plan["mix"]>, typeof mix> = mix;
