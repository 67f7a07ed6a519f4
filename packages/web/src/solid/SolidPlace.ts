import type { Plan, Side } from "@lapline/engine";

type Shape = NonNullable<Plan["shape"]>;

/** A place on the board's skin, as colour and words need it. */
export interface SolidPlace {
  readonly fromTailM: number;
  readonly side: Side;
  readonly face: "deck" | "bottom";
  /** In from the nearest edge, seen from above: the rail's widest line, or an end. */
  readonly fromEdgeM: number;
}

/** Names the place of a point of the solid (metres, the board's own frame), by the plan's outline and the rail's widest line. */
export function placeFinder(shape: Shape): (xM: number, yM: number, zM: number) => SolidPlace {
  const { outline, profile, lengthM } = shape;
  const [left, right, apex] = [
    lineOf(outline, ({ leftM }) => leftM),
    lineOf(outline, ({ rightM }) => rightM),
    lineOf(profile, ({ apexM }) => apexM),
  ];
  return (xM, yM, zM) => {
    const fromTailM = Math.min(Math.max(xM, 0), lengthM);
    const side: Side = yM >= 0 ? "left" : "right";
    const halfWidthM = (side === "left" ? left : right)(fromTailM);
    return {
      fromTailM,
      side,
      face: zM >= apex(fromTailM) ? "deck" : "bottom",
      fromEdgeM: Math.max(Math.min(halfWidthM - Math.abs(yM), fromTailM, lengthM - fromTailM), 0),
    };
  };
}

/** Points that stand in order from tail to nose as a line through them; level beyond both ends. */
export function lineOf<T extends { readonly fromTailM: number }>(
  points: readonly T[],
  read: (point: T) => number,
): (fromTailM: number) => number {
  const places = Float64Array.from(points, ({ fromTailM }) => fromTailM);
  const values = Float64Array.from(points, read);
  return (fromTailM) => {
    let [low, high] = [0, places.length - 1];
    if (!(fromTailM > places[low]!)) return values[low]!;
    if (fromTailM >= places[high]!) return values[high]!;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (places[middle]! <= fromTailM) low = middle;
      else high = middle;
    }
    const share = (fromTailM - places[low]!) / (places[high]! - places[low]!);
    return values[low]! + share * (values[high]! - values[low]!);
  };
}
