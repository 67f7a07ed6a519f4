import { SEAM_OVERLAP_M } from "../constants/rollCutting";
import type { PatternPlan, PatternPoint } from "../layup/LayupPlan";
import type { PiecePart, PlacedPiece } from "./CutPlan";
import { keepSide } from "./keepSide";

/** A point on the roll: along it from its free end, across it from the edge at the right hand. */
export interface RollPoint {
  readonly alongM: number;
  readonly acrossM: number;
}

/** The flat edge of a placed piece on its roll; what hangs over for trimming is left out. */
export function outlineOnRoll(pattern: PatternPlan, placed: PlacedPiece): readonly RollPoint[] {
  const outline = turnOutline(cutPart(pattern.points, placed.part), placed.turnRad);
  const hangsM = (placed.lengthM - outline.lengthM) / 2;
  return outline.points.map(({ alongM, acrossM }) => ({
    alongM: alongM + placed.fromStartM + hangsM,
    acrossM: acrossM + placed.fromEdgeM,
  }));
}

/** An outline turned on the roll and moved to where its box begins at nought both ways. */
export interface TurnedOutline {
  readonly points: readonly PatternPoint[];
  readonly lengthM: number;
  readonly widthM: number;
}

export function turnOutline(points: readonly PatternPoint[], turnRad: number): TurnedOutline {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  const turned = points.map(({ alongM, acrossM }) => ({
    alongM: cos * alongM - sin * acrossM,
    acrossM: sin * alongM + cos * acrossM,
  }));
  let [leastAlongM, mostAlongM] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [leastAcrossM, mostAcrossM] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { alongM, acrossM } of turned) {
    leastAlongM = Math.min(leastAlongM, alongM);
    mostAlongM = Math.max(mostAlongM, alongM);
    leastAcrossM = Math.min(leastAcrossM, acrossM);
    mostAcrossM = Math.max(mostAcrossM, acrossM);
  }
  return {
    points: turned.map(({ alongM, acrossM }) => ({
      alongM: alongM - leastAlongM,
      acrossM: acrossM - leastAcrossM,
    })),
    lengthM: mostAlongM - leastAlongM,
    widthM: mostAcrossM - leastAcrossM,
  };
}

/** One strip of a piece with a seam on the stringer: its own half and half of the overlap. */
export function cutPart(points: readonly PatternPoint[], part: PiecePart): readonly PatternPoint[] {
  if (part === "whole") return points;
  const sign = part === "left" ? 1 : -1;
  return keepSide(points, ({ acrossM }) => sign * acrossM + SEAM_OVERLAP_M.value / 2);
}
