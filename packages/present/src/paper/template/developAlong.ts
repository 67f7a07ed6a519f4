import type { Plan } from "@lapline/engine";

type Shape = NonNullable<Plan["shape"]>;
type Finset = NonNullable<Plan["finset"]>;
type Knot = readonly [straightM: number, tapeM: number];

/**
 * Gives the place along the bottom, by tape from the tail tips, of a straight distance from them: paper made so lies down true
 * on the rockered bottom.
 *
 * It reads the plan's own pairs of straight and tape: the profile's points, and each fin mark, box end and plug, which it hits
 * exactly. Between them it goes straight, which on the profile's spacing is within 0.01 mm of the plan's curve.
 */
export function developAlong(shape: Shape, finset: Finset | null): (straightM: number) => number {
  const knots = [...profileKnots(shape), ...(finset === null ? [] : finKnots(finset))].sort(
    ([a], [b]) => a - b,
  );
  return (straightM) => {
    const after = Math.min(Math.max(findAfter(knots, straightM), 1), knots.length - 1);
    const [lowStraightM, lowTapeM] = knots[after - 1] ?? [0, 0];
    const [highStraightM, highTapeM] = knots[after] ?? [1, 1];
    if (highStraightM === lowStraightM) return highTapeM;
    const share = (straightM - lowStraightM) / (highStraightM - lowStraightM);
    return lowTapeM + share * (highTapeM - lowTapeM);
  };
}

const profileKnots = ({ profile }: Shape): readonly Knot[] =>
  profile.map(({ fromTailM, fromTailTapeM }) => [fromTailM, fromTailTapeM]);

function finKnots({ marks, leashPlug }: Finset): readonly Knot[] {
  const knots: Knot[] = marks.flatMap(({ trailing, leading, box }) => [
    [trailing.fromTailM, trailing.fromTailTapeM] as const,
    [leading.fromTailM, leading.fromTailTapeM] as const,
    ...(box === null
      ? []
      : [
          [box.rearFromTailM, box.rearFromTailTapeM] as const,
          [box.frontFromTailM, box.frontFromTailTapeM] as const,
        ]),
  ]);
  return leashPlug === null ? knots : [...knots, [leashPlug.fromTailM, leashPlug.fromTailTapeM]];
}

/** The first knot that lies at or beyond a place. */
function findAfter(knots: readonly Knot[], straightM: number): number {
  let [low, high] = [0, knots.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((knots[middle]?.[0] ?? Number.POSITIVE_INFINITY) < straightM) low = middle + 1;
    else high = middle;
  }
  return low;
}
