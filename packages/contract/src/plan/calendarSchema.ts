import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const time = z.string().nullable();

const moment = z.object({
  kind: z.enum(["trim", "tape", "flip", "recoat", "sand", "full"]),
  at: z.string(),
  lowAt: time,
  highAt: time,
  untilAt: time,
});

const entry = z.object({
  step: z.string(),
  startsAt: time,
  endsAt: time,
  readyAt: time,
  readyLowAt: time,
  readyHighAt: time,
  opensAt: time,
  closesAt: time,
  latestStartAt: time,
  slackS: z.number().nullable(),
  because: z.object({
    cause: z.enum(["start", "need", "hours", "hands", "stand", "window", "warmth", "unknown"]),
    step: z.string().nullable(),
  }),
  sittings: z.array(z.object({ startsAt: z.string(), endsAt: z.string() })),
  moments: z.array(moment),
  sandFirstS: z.number(),
  late: z.boolean(),
  done: z.boolean(),
});

export const calendarSchema: Mirrors<NonNullable<Plan["calendar"]>[number], typeof entry> = entry;
