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
  waxVolumeM3: number,
  mixAtS: number,
  spreadS: number,
});

const coat = z.object({
  id: z.string(),
  resin: z.string(),
  temperatureK: number,
  resinTemperatureK: number,
  hardenerRatio: numberOrNull,
  clock: clock.nullable(),
  cups: z.array(cup),
});

const mix = z.object({ dewPointK: numberOrNull, coats: z.array(coat) });

export const mixSchema: Mirrors<NonNullable<Plan["mix"]>, typeof mix> = mix;
