import type { Plan } from "@lapline/engine";
import { z } from "zod";
import { calendarSchema } from "./calendarSchema";
import { costSchema } from "./costSchema";
import { cutplanSchema } from "./cutplanSchema";
import { finsetSchema } from "./finsetSchema";
import { layupSchema } from "./layupSchema";
import type { Mirrors } from "./Mirrors";
import { mixSchema } from "./mixSchema";
import { phrase } from "./phraseSchema";
import { repairSchema } from "./repairsSchema";
import { sandingSchema } from "./sandingSchema";
import { shapeSchema } from "./shapeSchema";
import { stepSchema, waterSchema } from "./stepsSchema";
import { weighinsSchema } from "./weighinsSchema";
import { byWeightSchema, weightSchema } from "./weightSchema";

const finding = z.object({
  code: z.string(),
  severity: z.enum(["note", "warning", "blocker"]),
  path: z.string(),
  text: z.string(),
  says: phrase,
});

const assumption = z.object({
  path: z.string(),
  value: z.string(),
  why: z.string(),
  says: z.object({ value: phrase, why: phrase }),
  source: z.string(),
});

const plan = z.object({
  format: z.literal("lapline-plan/1"),
  engine: z.string(),
  name: z.string(),
  shape: shapeSchema.nullable(),
  finset: finsetSchema.nullable(),
  layup: layupSchema.nullable(),
  cutplan: cutplanSchema.nullable(),
  mix: mixSchema.nullable(),
  sanding: sandingSchema.nullable(),
  byWeight: byWeightSchema.nullable(),
  weight: weightSchema.nullable(),
  weighins: weighinsSchema.nullable(),
  cost: costSchema.nullable(),
  steps: z.array(stepSchema).nullable(),
  repairs: z.array(repairSchema).nullable(),
  calendar: z.array(calendarSchema).nullable(),
  water: waterSchema,
  findings: z.array(finding),
  assumptions: z.array(assumption),
});

/** The plan as JSON. Open, so that a later engine may say more: a reader skips what it does not know. */
export const planSchema: Mirrors<Plan, typeof plan> = plan;
