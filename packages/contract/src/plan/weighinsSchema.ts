import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const told = number.nullable();

const entry = z.object({
  id: z.string(),
  after: z.string(),
  coats: z.array(z.string()),
  massKg: number,
  plannedKg: number,
  gainedKg: told,
  gainedLowKg: told,
  gainedHighKg: told,
  plannedGainKg: told,
  keptKg: told,
  keptLowKg: told,
  keptHighKg: told,
  plannedKeptKg: told,
  keptRatio: told,
  keptLowRatio: told,
  keptHighRatio: told,
  mixedKg: told,
  lossKg: told,
  lossLowKg: told,
  lossHighKg: told,
  glassRatio: told,
  glassLowRatio: told,
  glassHighRatio: told,
  filmM: told,
  filmLowM: told,
  filmHighM: told,
});

const ahead = z.object({
  id: z.string(),
  by: z.string(),
  plannedMassKg: number,
  resinMassKg: number,
  resinMassLowKg: number,
  resinMassHighKg: number,
});

const zone = z.object({
  id: z.string(),
  by: z.string(),
  fillThicknessM: number,
  fillThicknessLowM: number,
  fillThicknessHighM: number,
});

const weighins = z.object({
  scaleStepKg: number,
  entries: z.array(entry),
  ahead: z.array(ahead),
  zones: z.array(zone),
});

export const weighinsSchema: Mirrors<NonNullable<Plan["weighins"]>, typeof weighins> = weighins;
