import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";
import { phrase } from "./phraseSchema";

const number = z.number();

const need = z.object({
  step: z.string(),
  until: z.enum(["hands-off", "dry", "trim", "flip", "recoat", "sandable"]),
  because: z.string(),
  waitS: number.nullable(),
});

const step = z.object({
  id: z.string(),
  title: z.string(),
  after: z.array(z.string()),
  needs: z.array(need),
  because: z.string(),
  coat: z.string().nullable(),
  cures: z.string().nullable(),
  handsOnS: number,
  waitS: number.nullable(),
  noLoadS: number.nullable(),
  materials: z.array(z.string()),
  tools: z.array(z.string()),
  cautions: z.array(z.string()),
  done: z.boolean(),
  doneAt: z.string().nullable(),
});

const open = z.object({
  text: z.string(),
  says: phrase,
  step: z.string().nullable(),
  bars: z.boolean(),
});

const water = z.object({
  ready: z.boolean(),
  barred: z.boolean(),
  open: z.array(open),
  firstSurfAt: z.string().nullable(),
});

export const stepSchema: Mirrors<NonNullable<Plan["steps"]>[number], typeof step> = step;

export const waterSchema: Mirrors<Plan["water"], typeof water> = water;
