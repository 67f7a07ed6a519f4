import type { FlatFace } from "./FlatFace";

/** A corner of the fold line, walked round the flat so that the piece lies on the left hand. */
export interface FoldPoint {
  readonly alongM: number;
  readonly acrossM: number;
  readonly tapeM: number;
  /** How the edge that arrives here points, from the warp. */
  readonly headingRad: number;
  /** How far the next edge turns in towards the piece. */
  readonly turnRad: number;
  /** Of the edge that belongs to this corner: half of both its neighbours. */
  readonly lengthM: number;
  /** From the corner before to this one. */
  readonly arrivingM: number;
}

/** The fold line once round, from the middle of the right rail over the nose and back; flat ends are their upper edge. */
export function traceFold(flat: FlatFace): FoldPoint[] {
  const right = flat.stations.map(({ alongM, tapeM, rightM }) => ({ alongM, tapeM, acrossM: -rightM }));
  const left = flat.stations.map(({ alongM, tapeM, leftM }) => ({ alongM, tapeM, acrossM: leftM }));
  const middle = Math.floor(right.length / 2);
  const ring = [...right.slice(middle), ...left.reverse(), ...right.slice(0, middle)];
  const edges = ring.map((from, i) => {
    const to = ring[i + 1] ?? ring[0]!;
    const alongM = to.alongM - from.alongM;
    const acrossM = to.acrossM - from.acrossM;
    return { longM: Math.hypot(alongM, acrossM), headingRad: Math.atan2(acrossM, alongM) };
  });
  return ring.map((point, i) => {
    const arriving = edges[i - 1] ?? edges.at(-1)!;
    const leaving = edges[i]!;
    const isStill = arriving.longM === 0 || leaving.longM === 0;
    return {
      alongM: point.alongM,
      acrossM: point.acrossM,
      tapeM: point.tapeM,
      headingRad: arriving.headingRad,
      turnRad: isStill ? 0 : wrap(leaving.headingRad - arriving.headingRad),
      arrivingM: arriving.longM,
      lengthM: (arriving.longM + leaving.longM) / 2,
    };
  });
}

function wrap(angleRad: number): number {
  return angleRad - 2 * Math.PI * Math.floor((angleRad + Math.PI) / (2 * Math.PI));
}
