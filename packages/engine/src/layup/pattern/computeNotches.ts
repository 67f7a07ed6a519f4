import { LAP_GATHER_SHARE, LEAST_FLAP_M, NOTCH_SHORT_M, WIDEST_NOTCH_M } from "../../constants/clothCutting";
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
 * Where so many would leave too small a flap between them to hold, as at a pointed nose, there are fewer, and the flaps overlap.
 * A swallow's notch is spanned and slit to its crotch, and the flaps fold round its walls.
 */
export function computeNotches(flat: FlatFace, lapM: number): NotchPlan[] {
  if (!(lapM > 0)) return [];
  const wedges = findTightRuns(traceFold(flat), lapM).flatMap((run) => placeWedges(run, lapM));
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
  /** Corners of the fold line one after another, the first and the last of them sharp. */
  readonly points: readonly FoldPoint[];
  /** Along the fold line from its first corner to its last. */
  readonly longM: number;
  readonly turnRad: number;
}

/** Stretches of the fold line that turn more sharply than cloth gathers, corners less than a lap apart taken together. */
function findTightRuns(fold: readonly FoldPoint[], lapM: number): readonly TightRun[] {
  const ends: { first: number; last: number }[] = [];
  let sinceM = Number.POSITIVE_INFINITY;
  fold.forEach((point, i) => {
    sinceM += point.arrivingM;
    const gathered = 2 * lapM * point.turnRad;
    if (gathered <= LAP_GATHER_SHARE.value * Math.max(point.lengthM, lapM / 2)) return;
    const before = ends.at(-1);
    if (before === undefined || sinceM > lapM) ends.push({ first: i, last: i });
    else before.last = i;
    sinceM = 0;
  });
  return ends.map(({ first, last }) => {
    const points = fold.slice(first, last + 1);
    return {
      points,
      longM: points.slice(1).reduce((sumM, { arrivingM }) => sumM + arrivingM, 0),
      turnRad: points.reduce((sumRad, { turnRad }) => sumRad + turnRad, 0),
    };
  });
}

/** A corner's one notch takes it out whole; a curve's are alike, evenly apart at the lap's edge. */
function placeWedges(run: TightRun, lapM: number): readonly Place[] {
  const gatheredM = 2 * lapM * run.turnRad;
  if (run.longM < lapM) return [placeWedge(run, lapM, { edgeShare: 0.5, openM: gatheredM, takesTip: true })];
  const [widestM, flapM] = [WIDEST_NOTCH_M.value, LEAST_FLAP_M.value];
  const edgeM = edgeOf(run, lapM);
  const room = Math.max(1, Math.floor(edgeM / (widestM + flapM)));
  const count = Math.min(room, Math.ceil(gatheredM / widestM));
  const openM = Math.min(gatheredM / count, widestM);
  return Array.from({ length: count }, (_, k) =>
    placeWedge(run, lapM, { edgeShare: (k + 0.5) / count, openM, takesTip: false }),
  );
}

/** The lap's edge round a run, on the flat. */
const edgeOf = ({ longM, turnRad }: TightRun, lapM: number): number => longM + lapM * turnRad;

interface Wedge extends Pick<Place, "openM" | "takesTip"> {
  /** Where its mouth is, as a share of the lap's edge round the run. */
  readonly edgeShare: number;
}

function placeWedge(run: TightRun, lapM: number, { edgeShare, openM, takesTip }: Wedge): Place {
  const foot = findFoot(run, lapM, edgeShare * edgeOf(run, lapM));
  const away = (distanceM: number) => ({
    alongM: foot.alongM + distanceM * Math.cos(foot.outRad),
    acrossM: foot.acrossM + distanceM * Math.sin(foot.outRad),
  });
  const root = away(Math.min(NOTCH_SHORT_M.value, lapM / 2));
  const mouth = away(lapM);
  return {
    fromTailTapeM: foot.tapeM,
    ...root,
    toAlongM: mouth.alongM,
    toAcrossM: mouth.acrossM,
    openM,
    takesTip,
  };
}

interface Foot extends Pick<FoldPoint, "alongM" | "acrossM" | "tapeM"> {
  /** Square to the fold line, away from the piece. */
  readonly outRad: number;
}

/** The place on the fold line that a place of the lap's edge lies square to: on a side between two corners, or in a corner's fan. */
function findFoot({ points }: TightRun, lapM: number, alongEdgeM: number): Foot {
  let restM = alongEdgeM;
  let before = points[0]!;
  for (const [i, point] of points.entries()) {
    const sideM = i === 0 ? 0 : point.arrivingM;
    const outRad = point.headingRad - Math.PI / 2;
    if (restM < sideM) {
      const share = restM / sideM;
      const between = (name: "alongM" | "acrossM" | "tapeM") =>
        before[name] + share * (point[name] - before[name]);
      return { alongM: between("alongM"), acrossM: between("acrossM"), tapeM: between("tapeM"), outRad };
    }
    restM -= sideM;
    const fanM = lapM * Math.max(0, point.turnRad);
    if (restM <= fanM) return { ...point, outRad: outRad + restM / lapM };
    restM -= fanM;
    before = point;
  }
  return { ...before, outRad: before.headingRad + before.turnRad - Math.PI / 2 };
}

function nameEnd({ alongM }: Place, lapM: number, lastM: number): NotchPlan["at"] {
  if (alongM < 2 * lapM) return "tail";
  return alongM > lastM - 4 * lapM ? "nose" : "rail";
}
