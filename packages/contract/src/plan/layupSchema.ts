import type { Plan } from "@lapline/engine";
import { z } from "zod";
import type { Mirrors } from "./Mirrors";

const number = z.number();
const face = z.enum(["deck", "bottom"]);

const piece = z.object({
  id: z.string(),
  face,
  coat: z.string(),
  cloth: z.string(),
  pattern: z.string(),
  lengthM: number,
  widthM: number,
  areaM2: number,
  lapAreaM2: number,
  seamAreaM2: number,
  clothMassKg: number,
  resinMassKg: number,
  extent: z.object({ fromTailTapeM: number, toTapeM: number, angleRad: number }).nullable(),
});

const notch = z.object({
  id: z.string(),
  at: z.enum(["tail", "nose", "rail"]),
  kind: z.enum(["wedge", "slit"]),
  fromTailTapeM: number,
  alongM: number,
  acrossM: number,
  toAlongM: number,
  toAcrossM: number,
  openM: number,
  takesTip: z.boolean(),
});

const pattern = z.object({
  id: z.string(),
  face,
  points: z.array(z.object({ alongM: number, acrossM: number })),
  lengthM: number,
  widthM: number,
  areaM2: number,
  edgeM: number,
  turnsRad: z.array(number),
  notches: z.array(notch),
});

const term = z.object({
  id: z.enum([
    "in-glass",
    "in-laps",
    "in-patches",
    "in-hollow",
    "into-foam",
    "around-boxes",
    "in-corners",
    "net-film",
    "in-weave",
    "run-off",
    "styrene-lost",
    "dripped",
    "left-on-tools",
    "left-in-cups",
  ]),
  name: z.string(),
  massKg: number,
});

const filler = z.object({ id: z.string(), massKg: number, keptMassKg: number });

const coat = z.object({
  id: z.string(),
  kind: z.enum(["seal", "laminate", "fill", "gloss", "box", "repair", "repair-fill"]),
  face: face.nullable(),
  resin: z.string(),
  resinMassKg: number,
  resinMassLowKg: number,
  resinMassHighKg: number,
  keptMassKg: number,
  keptMassLowKg: number,
  keptMassHighKg: number,
  areaM2: number,
  filler: filler.nullable(),
  terms: z.array(term),
});

const zone = z.object({
  id: z.string(),
  glassArealMassKgM2: number,
  skinArealMassKgM2: number,
  laminateThicknessM: number,
  laminateThicknessLowM: number,
  laminateThicknessHighM: number,
  fibreVolumeFraction: number,
  fillThicknessM: number,
  fillThicknessLowM: number,
  fillThicknessHighM: number,
  glossThicknessM: number,
});

const fitting = z.object({
  id: z.string(),
  kind: z.enum(["box", "plug"]),
  bodyVolumeM3: number,
  pocketVolumeM3: number,
  pocketVolumeLowM3: number,
  pocketVolumeHighM3: number,
});

const schedule = z.object({
  id: z.enum(["own", "lighter-deck", "lighter-bottom", "heavier-deck", "heavier-bottom", "stronger-glass"]),
  bottom: z.array(z.string()),
  deck: z.array(z.string()),
  skinMassKg: number,
  stiffnessRatio: number,
  deckWrinklingRatio: number.nullable(),
  bottomWrinklingRatio: number.nullable(),
});

const layup = z.object({
  faces: z.array(z.object({ id: face, areaM2: number, arcM: number, girthMaxM: number, lapM: number })),
  railLineM: number,
  resinRatio: number,
  resinRatioLow: number,
  resinRatioHigh: number,
  cutting: z.enum(["rolled", "pattern"]),
  pieces: z.array(piece),
  patterns: z.array(pattern),
  coats: z.array(coat),
  zones: z.array(zone),
  fittings: z.array(fitting),
  compared: z.array(schedule),
});

export const layupSchema: Mirrors<NonNullable<Plan["layup"]>, typeof layup> = layup;
