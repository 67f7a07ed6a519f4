import type { Plan } from "@lapline/engine";

export interface MarkPlace {
  readonly id: string;
  /** To the reader's right of the stringer with the bottom up, where the surfer's left lies, and up from the tail by tape; mm. */
  readonly x: number;
  readonly up: number;
}

/** Where the plan wants each mark on paper that lies along the bottom. */
export function planMarks({ shape, finset }: Plan): readonly MarkPlace[] {
  if (shape === null || finset === null) throw new Error("the plan has no fins");
  const isStringer = finset.line.atTailM === 0 && finset.line.skewRad === 0;
  return finset.marks.flatMap((mark) =>
    (["trailing", "leading"] as const).map((end) => {
      const { at, fromTailTapeM } = mark[end];
      const tapeM = isStringer ? fromTailTapeM : tapeAt(shape.profile, at.xM);
      return { id: `${mark.id} ${end}`, x: 1000 * at.yM, up: 1000 * tapeM };
    }),
  );
}

type Profile = NonNullable<Plan["shape"]>["profile"];

/** By tape along the bottom at a straight distance from the tail, between the plan's own points. */
export function tapeAt(profile: Profile, straightM: number): number {
  const after = profile.findIndex(({ fromTailM }) => fromTailM >= straightM);
  const [high, low] = [profile[after], profile[after - 1]];
  if (high === undefined || low === undefined) return high?.fromTailTapeM ?? Number.NaN;
  const share = (straightM - low.fromTailM) / (high.fromTailM - low.fromTailM);
  return low.fromTailTapeM + share * (high.fromTailTapeM - low.fromTailTapeM);
}

/**
 * How far found places lie from the plan's at most, millimetres, once both are laid middle on middle: neither turned, nor mirrored,
 * nor stretched, so that a template that is any of these fails. Every mark must be found, and nothing else.
 */
export function farthestOff(
  found: ReadonlyArray<{ readonly x: number; readonly y: number }>,
  wanted: readonly MarkPlace[],
): number {
  if (found.length !== wanted.length) return Number.POSITIVE_INFINITY;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const [foundX, foundY] = [mean(found.map(({ x }) => x)), mean(found.map(({ y }) => y))];
  const [wantedX, wantedUp] = [mean(wanted.map(({ x }) => x)), mean(wanted.map(({ up }) => up))];
  return Math.max(
    ...wanted.map((mark) =>
      Math.min(
        ...found.map(({ x, y }) =>
          Math.hypot(x - foundX - (mark.x - wantedX), foundY - y - (mark.up - wantedUp)),
        ),
      ),
    ),
  );
}
