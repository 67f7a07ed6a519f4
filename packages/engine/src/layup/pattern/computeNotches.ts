import {
  CORNER_TURN_RAD,
  LAP_GATHER_SHARE,
  NOTCH_SHORT_M,
  WIDEST_NOTCH_M,
} from "../../constants/clothCutting";
import type { NotchPlan } from "../LayupPlan";
import type { FlatFace } from "./FlatFace";
import { type FoldPoint, traceFold } from "./traceFold";

type Place = Pick<NotchPlan, "alongM" | "acrossM" | "toAlongM" | "toAcrossM" | "openM" | "fromTailTapeM">;

/**
 * Where the lap must be notched to lie down. On the flat the lap's edge is longer than the rail by lap × turn, on the board shorter by as
 * much; what cloth cannot gather by shearing comes out as wedges of 2 × lap × turn in all, each as wide at the mouth as is usual at most.
 * A swallow's notch is spanned and slit to its crotch, and the flaps fold round its walls.
 */
export function computeNotches(flat: FlatFace, lapM: number): NotchPlan[] {
  if (!(lapM > 0)) return [];
  const wedges = findTightRuns(traceFold(flat), lapM).flatMap((run) => placeInRun(run, lapM));
  const counts = new Map<string, number>();
  const lastM = flat.stations.at(-1)!.alongM;
  const named = wedges.map((wedge): NotchPlan => {
    const at = nameEnd(wedge, lapM, lastM);
    const n = (counts.get(at) ?? 0) + 1;
    counts.set(at, n);
    return { id: `${at}-${n}`, at, kind: "wedge", ...wedge };
  });
  if (flat.crotchM === 0) return named;
  const slit: NotchPlan = {
    id: "crotch",
    at: "tail",
    kind: "slit",
    fromTailTapeM: 0,
    alongM: flat.crotchM,
    acrossM: 0,
    toAlongM: -lapM,
    toAcrossM: 0,
    openM: 0,
  };
  return [...named, slit];
}

interface TightRun {
  readonly points: FoldPoint[];
  /** Along the fold line from its first corner to its last. */
  longM: number;
}

/** Stretches of the fold line that turn more sharply than cloth gathers, corners less than a lap apart taken together. */
function findTightRuns(fold: readonly FoldPoint[], lapM: number): TightRun[] {
  const runs: TightRun[] = [];
  let sinceM = Number.POSITIVE_INFINITY;
  for (const point of fold) {
    sinceM += point.arrivingM;
    const gathered = 2 * lapM * point.turnRad;
    if (gathered <= LAP_GATHER_SHARE.value * Math.max(point.lengthM, lapM / 2)) continue;
    const run = runs.at(-1);
    if (run === undefined || sinceM > lapM) runs.push({ points: [point], longM: 0 });
    else {
      run.points.push(point);
      run.longM += sinceM;
    }
    sinceM = 0;
  }
  return runs;
}

/** A corner gets one notch for about a right angle and takes the whole corner out; a curve gets them side by side. */
function placeInRun({ points: run, longM }: TightRun, lapM: number): Place[] {
  const turnRad = run.reduce((sumRad, point) => sumRad + point.turnRad, 0);
  const isCorner = longM < lapM;
  const widestM = isCorner ? 2 * lapM * CORNER_TURN_RAD.value : WIDEST_NOTCH_M.value;
  const count = Math.max(1, Math.ceil((2 * lapM * turnRad) / widestM));
  return Array.from({ length: count }, (_, k) => {
    let restRad = ((k + 0.5) / count) * turnRad;
    const point =
      run.find((candidate) => {
        if (restRad <= candidate.turnRad) return true;
        restRad -= candidate.turnRad;
        return false;
      }) ?? run.at(-1)!;
    const outRad = point.headingRad + restRad - Math.PI / 2;
    const away = (distanceM: number) => ({
      alongM: point.alongM + distanceM * Math.cos(outRad),
      acrossM: point.acrossM + distanceM * Math.sin(outRad),
    });
    const root = away(Math.min(NOTCH_SHORT_M.value, lapM / 2));
    const mouth = away(lapM);
    return {
      fromTailTapeM: point.tapeM,
      ...root,
      toAlongM: mouth.alongM,
      toAcrossM: mouth.acrossM,
      openM: (2 * lapM * turnRad) / count,
    };
  });
}

function nameEnd({ alongM }: Place, lapM: number, lastM: number): NotchPlan["at"] {
  if (alongM < 2 * lapM) return "tail";
  return alongM > lastM - 4 * lapM ? "nose" : "rail";
}
