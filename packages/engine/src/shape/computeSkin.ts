import { SIDES } from "../survey/Side";
import { buildHalfRing, type HalfRing } from "./buildRing";
import type { SurveyedShape } from "./SurveyedShape";
import { pointsAlong } from "./stationsAlong";

export interface Skin {
  readonly deckAreaM2: number;
  readonly bottomAreaM2: number;
  /** The flat end of a square or squash tail, and the walls of a swallow's notch. */
  readonly endAreaM2: number;
  readonly centre: { readonly xM: number; readonly yM: number; readonly zM: number };
}

/** On 60 × (12 + 14) quadrilaterals a side the skin's area is true to 0.1 %. */
const INTERVALS = 60;
const RING = { deckIntervals: 12, bottomIntervals: 14 };

/**
 * True area of deck and bottom, rocker and rails included, divided at the rails' widest line, and the centre of volume.
 * Each side's skin is laid out in rings; the quadrilaterals between are summed by their half diagonals' cross product.
 */
export function computeSkin(shape: SurveyedShape): Skin {
  // A strip ends where the outline breaks, or a notch's wall would run on past the crotch.
  const places = [...pointsAlong(shape.lengthM, INTERVALS), ...shape.cornersM()].sort((a, b) => a - b);
  let deckAreaM2 = 0;
  let bottomAreaM2 = 0;
  let endAreaM2 = 0;
  const corners = new Set(shape.cornersM());
  // Equal steps of θ weigh by sin θ; a ring put in between weighs nothing.
  const weightAt = (xM: number): number =>
    corners.has(xM) ? 0 : Math.sqrt(Math.max(0, xM * (shape.lengthM - xM)));
  const moment = { v: 0, x: 0, y: 0, z: 0 };
  for (const side of SIDES) {
    let before: HalfRing | null = null;
    places.forEach((xM) => {
      const ring = buildHalfRing(shape, side, xM, RING);
      if (before !== null) {
        deckAreaM2 += stripArea(before, ring, 0, ring.rail);
        bottomAreaM2 += stripArea(before, ring, ring.rail, ring.yM.length - 1);
        if (shape.notchHalfWidthM(before.xM) > 0) endAreaM2 += wallArea(before, ring);
      } else endAreaM2 += ringMoments(ring).area;
      addMoments(moment, ring, weightAt(xM));
      before = ring;
    });
  }
  const { v, x, y, z } = moment;
  return { deckAreaM2, bottomAreaM2, endAreaM2, centre: { xM: x / v, yM: y / v, zM: z / v } };
}

function stripArea(a: HalfRing, b: HalfRing, from: number, to: number): number {
  const dx = b.xM - a.xM;
  let area = 0;
  for (let i = from; i < to; i++) {
    const py = b.yM[i + 1]! - a.yM[i]!;
    const pz = b.zM[i + 1]! - a.zM[i]!;
    const qy = b.yM[i]! - a.yM[i + 1]!;
    const qz = b.zM[i]! - a.zM[i + 1]!;
    area += Math.sqrt((py * qz - pz * qy) ** 2 + (dx * (qz - pz)) ** 2 + (dx * (py - qy)) ** 2) / 2;
  }
  return area;
}

function wallArea(a: HalfRing, b: HalfRing): number {
  const end = a.yM.length - 1;
  const along = Math.hypot(b.xM - a.xM, b.yM[0]! - a.yM[0]!);
  return (along * (a.zM[0]! - a.zM[end]! + b.zM[0]! - b.zM[end]!)) / 2;
}

/** Area and first moments of the half section that a ring bounds, closed along the centre (shoelace formula). */
function ringMoments({ yM, zM }: HalfRing): { area: number; y: number; z: number } {
  let area = 0;
  let my = 0;
  let mz = 0;
  for (let i = 0; i < yM.length; i++) {
    const j = i + 1 === yM.length ? 0 : i + 1;
    const cross = yM[i]! * zM[j]! - yM[j]! * zM[i]!;
    area += cross / 2;
    my += (cross * (yM[i]! + yM[j]!)) / 6;
    mz += (cross * (zM[i]! + zM[j]!)) / 6;
  }
  // The right side's ring runs the other way round.
  const sign = Math.sign(area);
  return { area: sign * area, y: sign * my, z: sign * mz };
}

function addMoments(
  moment: { v: number; x: number; y: number; z: number },
  ring: HalfRing,
  weight: number,
): void {
  const { area, y, z } = ringMoments(ring);
  moment.v += weight * area;
  moment.x += weight * area * ring.xM;
  moment.y += weight * y;
  moment.z += weight * z;
}
