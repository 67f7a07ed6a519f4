import type { PatternPlan, PatternPoint } from "../LayupPlan";
import { closeEdges, measurePattern } from "./computePattern";
import type { EdgePoint } from "./EdgePoint";
import type { FlatFace, FlatStation } from "./FlatFace";
import { simplifyEdge } from "./simplifyEdge";

/** A patch lies flat: three times a pencil line is near enough. */
const PATCH_TOLERANCE_M = 0.001;

export interface PatchOnFlat {
  readonly id: string;
  readonly fromTailTapeM: number;
  readonly toTapeM: number;
  readonly widthM: number | undefined;
  /** Of the warp against the stringer. */
  readonly angleRad: number;
  readonly turnsRad: readonly number[];
}

/** The flat piece for a patch, without lap, turned so that its warp runs along; what is wider than the face ends at the widest line. */
export function computePatchPattern(flat: FlatFace, patch: PatchOnFlat): PatternPlan {
  const within = [
    readStation(flat, patch.fromTailTapeM),
    ...flat.stations.filter(
      ({ tapeM }) => tapeM > patch.fromTailTapeM && tapeM < Math.min(patch.toTapeM, lastTapeM(flat)),
    ),
    readStation(flat, patch.toTapeM),
  ];
  const halfM = patch.widthM === undefined ? Number.POSITIVE_INFINITY : patch.widthM / 2;
  const edge = (out: (station: FlatStation) => number): EdgePoint[] =>
    simplifyEdge(
      within.map((station) => ({ alongM: station.alongM, outM: Math.min(out(station), halfM) })),
      PATCH_TOLERANCE_M,
    );
  const lying = closeEdges(
    edge(({ leftM }) => leftM),
    edge(({ rightM }) => rightM),
  );
  return {
    id: patch.id,
    face: flat.face,
    ...measurePattern(lying.map((point) => turnBack(point, patch.angleRad))),
    turnsRad: patch.turnsRad,
    notches: [],
  };
}

function lastTapeM(flat: FlatFace): number {
  return flat.stations.at(-1)!.tapeM;
}

/** The face at a place between two stations, taken straight. */
function readStation({ stations }: FlatFace, tapeM: number): FlatStation {
  const after = Math.max(
    1,
    stations.findIndex((station) => station.tapeM >= tapeM),
  );
  const to = stations[after]!;
  const from = stations[after - 1]!;
  const share = Math.min(Math.max((tapeM - from.tapeM) / (to.tapeM - from.tapeM), 0), 1);
  const between = (a: number, b: number) => a + share * (b - a);
  return {
    tapeM,
    alongM: between(from.alongM, to.alongM),
    leftM: between(from.leftM, to.leftM),
    rightM: between(from.rightM, to.rightM),
  };
}

function turnBack({ alongM, acrossM }: PatternPoint, angleRad: number): PatternPoint {
  const cos = Math.cos(angleRad);
  const sin = Math.sin(angleRad);
  return { alongM: cos * alongM + sin * acrossM, acrossM: cos * acrossM - sin * alongM };
}
