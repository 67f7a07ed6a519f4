import { PATTERN_TOLERANCE_M } from "../../constants/clothCutting";
import type { PatternPlan, PatternPoint } from "../LayupPlan";
import { computeNotches } from "./computeNotches";
import type { EdgePoint } from "./EdgePoint";
import type { FlatFace } from "./FlatFace";
import { rollOutEdge } from "./rollOutEdge";
import { simplifyEdge } from "./simplifyEdge";
import { widenEdge } from "./widenEdge";

/** A warp that lies with the stringer may run either way. */
const END_FOR_END: readonly number[] = [0, Math.PI];

/**
 * The flat piece for a whole face: the face rolled out, its share of a flat tail's end, and the lap all round. Cloth is taken not to
 * stretch.
 */
export function computePattern(flat: FlatFace, id: string, lapM: number): PatternPlan {
  const [left, right] = (["left", "right"] as const).map((side) =>
    simplifyEdge(widenEdge(rollOutEdge(flat, side), lapM), PATTERN_TOLERANCE_M.value),
  );
  return {
    id,
    face: flat.face,
    ...measurePattern(closeEdges(left!, right!)),
    turnsRad: END_FOR_END,
    notches: computeNotches(flat, lapM),
  };
}

/** Once round, the piece on the left hand: out along the right side, back along the left. */
export function closeEdges(left: readonly EdgePoint[], right: readonly EdgePoint[]): PatternPoint[] {
  const ring = [
    ...right.map(({ alongM, outM }) => ({ alongM, acrossM: outM === 0 ? 0 : -outM })),
    ...left.map(({ alongM, outM }) => ({ alongM, acrossM: outM })).reverse(),
  ];
  return ring.filter((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    return Math.hypot(point.alongM - before.alongM, point.acrossM - before.acrossM) > 1e-9;
  });
}

/** Size, area (shoelace formula) and edge of a closed piece. */
export function measurePattern(points: readonly PatternPoint[]) {
  let twiceAreaM2 = 0;
  let edgeM = 0;
  points.forEach((point, i) => {
    const next = points[(i + 1) % points.length]!;
    twiceAreaM2 += point.alongM * next.acrossM - next.alongM * point.acrossM;
    edgeM += Math.hypot(next.alongM - point.alongM, next.acrossM - point.acrossM);
  });
  const spreadM = (places: readonly number[]) => Math.max(...places) - Math.min(...places);
  return {
    points,
    lengthM: spreadM(points.map(({ alongM }) => alongM)),
    widthM: spreadM(points.map(({ acrossM }) => acrossM)),
    areaM2: twiceAreaM2 / 2,
    edgeM,
  };
}
