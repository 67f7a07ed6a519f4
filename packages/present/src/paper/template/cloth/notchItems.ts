import type { Item } from "../../../drawing/Drawing";
import type { Pattern } from "./CutPiece";
import type { PieceLay } from "./layOutPiece";

type Notch = Pattern["notches"][number];
type FlatPoint = Pattern["points"][number];

/** A wedge on the cut edge, by how far round from the pattern's first point its legs meet it. */
interface Wedge {
  readonly notch: Notch;
  fromM: number;
  toM: number;
}

/**
 * Wedges by both their legs, from the root to the cut edge, as wide along that edge as they open; a slit by its one line. Where
 * neighbours would cut into each other they meet half-way, for there all of the edge between them goes.
 */
export function notchItems({ points, notches }: Pattern, { place }: PieceLay): readonly Item[] {
  const wedges = notches
    .filter(({ kind }) => kind === "wedge")
    .map((notch): Wedge => {
      const mouthM = nearestRound(points, { alongM: notch.toAlongM, acrossM: notch.toAcrossM });
      return { notch, fromM: mouthM - notch.openM / 2, toM: mouthM + notch.openM / 2 };
    })
    .toSorted((a, b) => a.fromM + a.toM - b.fromM - b.toM);
  wedges.forEach((wedge, i) => {
    const next = wedges[i + 1];
    if (next === undefined || next.fromM >= wedge.toM) return;
    wedge.toM = next.fromM = (wedge.toM + next.fromM) / 2;
  });
  const slits = notches.filter(({ kind }) => kind === "slit");
  return [
    ...wedges.map(({ notch, fromM, toM }): Item => {
      const legs = [pointRound(points, fromM), notch, pointRound(points, toM)];
      return { kind: "polyline", closed: false, pen: "thick", points: legs.map(place) };
    }),
    ...slits.map((notch): Item => {
      const mouth = { alongM: notch.toAlongM, acrossM: notch.toAcrossM };
      return { kind: "line", pen: "thick", from: place(notch), to: place(mouth) };
    }),
  ];
}

/** How far round the edge, from its first point on, lies what is nearest to a place. */
function nearestRound(points: readonly FlatPoint[], at: FlatPoint): number {
  let roundM = 0;
  let best = { roundM: 0, offM: Number.POSITIVE_INFINITY };
  points.forEach((from, i) => {
    const to = points[(i + 1) % points.length] ?? from;
    const [alongM, acrossM] = [to.alongM - from.alongM, to.acrossM - from.acrossM];
    const longM = Math.hypot(alongM, acrossM);
    const dot = (at.alongM - from.alongM) * alongM + (at.acrossM - from.acrossM) * acrossM;
    const share = longM === 0 ? 0 : Math.min(Math.max(dot / longM ** 2, 0), 1);
    const offM = Math.hypot(
      from.alongM + share * alongM - at.alongM,
      from.acrossM + share * acrossM - at.acrossM,
    );
    if (offM < best.offM) best = { roundM: roundM + share * longM, offM };
    roundM += longM;
  });
  return best.roundM;
}

/** The point of the edge so far round it; it goes on past its first point, either way. */
function pointRound(points: readonly FlatPoint[], roundM: number): FlatPoint {
  const sides = points.map((from, i) => {
    const to = points[(i + 1) % points.length] ?? from;
    return { from, to, longM: Math.hypot(to.alongM - from.alongM, to.acrossM - from.acrossM) };
  });
  const edgeM = sides.reduce((sumM, { longM }) => sumM + longM, 0);
  let restM = ((roundM % edgeM) + edgeM) % edgeM;
  for (const { from, to, longM } of sides) {
    if (restM <= longM && longM > 0) {
      const share = restM / longM;
      return {
        alongM: from.alongM + share * (to.alongM - from.alongM),
        acrossM: from.acrossM + share * (to.acrossM - from.acrossM),
      };
    }
    restM -= longM;
  }
  return points[0] ?? { alongM: 0, acrossM: 0 };
}
