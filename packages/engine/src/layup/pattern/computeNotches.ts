import {
  CORNER_TURN_RAD,
  LAP_GATHER_SHARE,
  LEAST_FLAP_M,
  NOTCH_SHORT_M,
  WIDEST_NOTCH_M,
} from "../../constants/clothCutting";
import type { NotchPlan } from "../LayupPlan";
import type { FlatFace } from "./FlatFace";
import { type FoldPoint, traceFold } from "./traceFold";

type Place = Pick<
  NotchPlan,
  "alongM" | "acrossM" | "toAlongM" | "toAcrossM" | "openM" | "fromTailTapeM" | "takesTip"
>;

/**
 * Where the lap must be notched to lie down. On the flat the lap's edge is longer than the rail by lap × turn, on the board shorter by as
 * much; what cloth cannot gather by shearing comes out as wedges of 2 × lap × turn in all, each as wide at the mouth as is usual at most.
 * Where they would leave too small a flap between them to hold, as at a pointed nose, neighbours become one that takes the tip out.
 * A swallow's notch is spanned and slit to its crotch, and the flaps fold round its walls.
 */
export function computeNotches(flat: FlatFace, lapM: number): NotchPlan[] {
  if (!(lapM > 0)) return [];
  const wedges = findTightRuns(traceFold(flat), lapM).flatMap((run) => placeWithFlaps(run, lapM));
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
    takesTip: false,
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

/** Some of a run's turn, from one share of it to another, that one wedge takes out. */
interface Share {
  readonly from: number;
  readonly to: number;
}

/** A corner gets one notch for about a right angle and takes the whole corner out; a curve gets them side by side. */
function placeWithFlaps(run: TightRun, lapM: number): Place[] {
  const turnRad = turnOf(run);
  const isCorner = run.longM < lapM;
  const widestM = isCorner ? 2 * lapM * CORNER_TURN_RAD.value : WIDEST_NOTCH_M.value;
  const count = Math.max(1, Math.ceil((2 * lapM * turnRad) / widestM));
  let shares = Array.from({ length: count }, (_, k): Share => ({ from: k / count, to: (k + 1) / count }));
  for (;;) {
    const places = shares.map((share) => placeWedge(run, lapM, share, share.to - share.from > 1.5 / count));
    const tight = findTightest(places);
    if (tight.length === 0) return isCorner ? places.map((place) => ({ ...place, takesTip: true })) : places;
    const ends = shares.filter((_, i) => !tight.includes(i)).map(({ to }) => to);
    shares = ends.map((to, i) => ({ from: ends[i - 1] ?? 0, to }));
  }
}

/** So near to the tightest, a pair is its mirror on the board's other side and is treated alike. */
const ALIKE_M = 0.002;

/** Wedges that leave the least before the next one, where that is less than holds: by their place, none where all hold. */
function findTightest(places: readonly Place[]): readonly number[] {
  const flapsM = places.slice(1).map((next, i) => {
    const one = places[i]!;
    const apartM = Math.hypot(next.toAlongM - one.toAlongM, next.toAcrossM - one.toAcrossM);
    return apartM - (one.openM + next.openM) / 2;
  });
  const leastM = Math.min(...flapsM);
  if (leastM >= LEAST_FLAP_M.value) return [];
  return flapsM.flatMap((flapM, i) => (flapM <= leastM + ALIKE_M ? [i] : []));
}

const turnOf = ({ points }: TightRun): number => points.reduce((sumRad, point) => sumRad + point.turnRad, 0);

/** Apart by this share of the turn on either side, the middle of an edge is found between its two corners. */
const BESIDE_SHARE = 1e-9;

function placeWedge(run: TightRun, lapM: number, { from, to }: Share, takesTip: boolean): Place {
  const turnRad = turnOf(run);
  const middle = (from + to) / 2;
  const [before, after] = [
    findTurned(run, (middle - BESIDE_SHARE) * turnRad),
    findTurned(run, (middle + BESIDE_SHARE) * turnRad),
  ];
  const away = (distanceM: number) => ({
    alongM: (before.point.alongM + after.point.alongM) / 2 + distanceM * Math.cos(after.outRad),
    acrossM: (before.point.acrossM + after.point.acrossM) / 2 + distanceM * Math.sin(after.outRad),
  });
  const root = away(Math.min(NOTCH_SHORT_M.value, lapM / 2));
  const mouth = away(lapM);
  return {
    fromTailTapeM: after.point.tapeM,
    ...root,
    toAlongM: mouth.alongM,
    toAcrossM: mouth.acrossM,
    openM: 2 * lapM * turnRad * (to - from),
    takesTip,
  };
}

/** The corner at which a run has turned so far, and how its edge looks out there. */
function findTurned(
  { points }: TightRun,
  turnedRad: number,
): { readonly point: FoldPoint; readonly outRad: number } {
  let restRad = turnedRad;
  for (const point of points) {
    if (restRad <= point.turnRad) return { point, outRad: point.headingRad + restRad - Math.PI / 2 };
    restRad -= point.turnRad;
  }
  const point = points.at(-1)!;
  return { point, outRad: point.headingRad + point.turnRad - Math.PI / 2 };
}

function nameEnd({ alongM }: Place, lapM: number, lastM: number): NotchPlan["at"] {
  if (alongM < 2 * lapM) return "tail";
  return alongM > lastM - 4 * lapM ? "nose" : "rail";
}
