import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const numberOrNull = number.nullable();

const length = z.object({
  id: z.string(),
  targetM: number,
  toleranceM: numberOrNull,
  readM: numberOrNull,
  errorM: numberOrNull,
});

const angle = z.object({
  id: z.string(),
  targetRad: number,
  toleranceRad: numberOrNull,
  readRad: numberOrNull,
  errorRad: numberOrNull,
});

const correction = z.object({
  end: z.enum(["none", "trailing", "leading", "both"]),
  alongM: number,
  trailingAcrossM: number,
  leadingAcrossM: number,
  cantRad: number,
  deeperM: number,
});

const check = z.object({
  id: z.string(),
  kind: z.enum(["check", "reading"]),
  matter: z.enum([
    "bottom-up",
    "nose-away",
    "left-named",
    "string",
    "diagonals",
    "marks",
    "sides",
    "cant",
    "dry-fit",
    "depth-stop",
    "proud",
    "slots-taped",
    "base-fits",
  ]),
  title: z.string(),
  how: z.string(),
  fin: z.string().nullable(),
  side: z.enum(["left", "right", "centre"]).nullable(),
  from: z.enum(["nose", "tail", "crotch"]).nullable(),
  required: z.boolean(),
  madeFor: z
    .object({
      on: z.enum(["foam", "laminate", "fill"]).nullable(),
      lengthM: numberOrNull,
      widthM: numberOrNull,
      depthM: numberOrNull,
      cantRad: numberOrNull,
      baseM: numberOrNull,
    })
    .nullable(),
  state: z.enum(["open", "good", "out"]),
  lengths: z.array(length),
  angles: z.array(angle),
  correction: correction.nullable(),
});

const patch = z.object({ lengthM: number, widthM: number });

const box = z.object({
  id: z.string(),
  cutOut: z.object({ lengthM: number, widthM: number, depthM: number }),
  mostBitM: number,
  bits: z.array(z.object({ id: z.enum(["mm", "inch"]), diameterM: numberOrNull })),
  proudM: number,
  foamOverCutM: numberOrNull,
  fillVolumeM3: number,
  fillVolumeLowM3: number,
  fillVolumeHighM3: number,
  patch: patch.nullable(),
  cureBeforeLoadS: number,
});

const glassedOn = z.object({
  id: z.string(),
  filletRadiusM: number,
  filletVolumeM3: number,
  tackLengthM: number,
  patch,
  cureBeforeLoadS: number,
});

const verify = z.object({
  verdict: z.enum(["go", "correct", "open", "blocked"]),
  next: z.string().nullable(),
  surface: z.enum(["foam", "laminate", "fill"]),
  checks: z.array(check),
  boxes: z.array(box),
  glassedOn: z.array(glassedOn),
  cautions: z.array(z.string()),
});

export const verifyPlanSchema: Mirrors<NonNullable<Plan["finset"]>["verify"], typeof verify> = verify;
