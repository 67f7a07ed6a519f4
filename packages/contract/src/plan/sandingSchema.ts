import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const side = z.enum(["left", "right"]);

const zone = z.object({
  id: z.string(),
  fromTailM: number.nullable(),
  filmM: number,
  filmLowM: number,
  filmHighM: number,
  filmBy: z.enum(["plan", "weigh-in", "gauge"]),
  takenM: number,
  takenLowM: number,
  takenHighM: number,
  remainingM: number,
  remainingLowM: number,
  remainingHighM: number,
  leastM: number,
  leastLowM: number,
  leastHighM: number,
  radiusM: number.nullable(),
  throughShare: number,
  risk: z.enum(["through", "thin", "enough"]),
  rank: number,
  ledger: z.array(z.object({ grit: z.string(), takenM: number, leftM: number })),
});

const grit = z.object({
  id: z.string(),
  grit: z.string(),
  grainM: number,
  us: z.string().nullable(),
  on: z.enum(["fill", "gloss"]),
  wet: z.boolean(),
  onEdges: z.boolean(),
  removesM: number,
  removesLowM: number,
  removesHighM: number,
  scratchM: number,
  scratchLowM: number,
  scratchHighM: number,
  passes: number,
  handsOnS: number,
  handsOnLowS: number,
  handsOnHighS: number,
  railsS: number,
  discs: number,
  sheets: number,
});

const work = z.object({ id: z.string(), handsOnS: number, handsOnLowS: number, handsOnHighS: number });

const place = z.object({
  id: z.string(),
  side,
  fromTailM: number,
  radiusM: number,
  filmM: number,
  takenM: number,
  remainingM: number,
});

const sanding = z.object({
  zones: z.array(zone),
  grits: z.array(grit),
  work: z.array(work),
  places: z.array(place),
  worst: z.object({ place: z.string(), side, fromTailM: number, remainingM: number }).nullable(),
  admissibleRoughnessM: number,
  enoughFrom: z.string(),
});

export const sandingSchema: Mirrors<NonNullable<Plan["sanding"]>, typeof sanding> = sanding;
