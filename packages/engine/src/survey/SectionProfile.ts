import type { BottomInput, SectionInput } from "./SurveyInput";

/** The section's numbers at one place along the board. */
export interface SectionNumbers {
  readonly apex: number;
  readonly deckFullness: number;
  readonly bottomFullness: number;
  readonly concaveM: number;
  readonly veeM: number;
}

interface Knot {
  readonly xM: number;
  readonly values: readonly number[];
}

/**
 * The section's numbers along the board: constant, or linear between the places where they were given and constant
 * beyond the outermost.
 */
export class SectionProfile {
  private readonly shape: readonly Knot[];
  private readonly bottom: readonly Knot[];

  /** `place` carries a distance from the tail to the straight frame. */
  constructor(
    sections: readonly SectionInput[],
    bottoms: readonly BottomInput[],
    place: (fromTailM: number) => number,
  ) {
    this.shape = sortKnots(
      sections.map((s) => ({
        xM: place(s.fromTailM ?? 0),
        values: [s.apex, s.deckFullness, s.bottomFullness],
      })),
    );
    this.bottom = sortKnots(
      bottoms.map((b) => ({
        xM: place(b.fromTailM ?? 0),
        values: [b.kind === "concave" ? b.depthM : 0, b.kind === "vee" ? b.depthM : 0],
      })),
    );
  }

  at(xM: number): SectionNumbers {
    const [apex, deckFullness, bottomFullness] = interpolate(this.shape, xM);
    const [concaveM, veeM] = this.bottom.length === 0 ? [0, 0] : interpolate(this.bottom, xM);
    return {
      apex: apex!,
      deckFullness: deckFullness!,
      bottomFullness: bottomFullness!,
      concaveM: concaveM!,
      veeM: veeM!,
    };
  }
}

function sortKnots(knots: Knot[]): Knot[] {
  return knots.sort((a, b) => a.xM - b.xM);
}

function interpolate(knots: readonly Knot[], xM: number): readonly number[] {
  if (knots.length === 1) return knots[0]!.values;
  const after = knots.findIndex((k) => k.xM >= xM);
  if (after === 0) return knots[0]!.values;
  if (after === -1) return knots.at(-1)!.values;
  const a = knots[after - 1]!;
  const b = knots[after]!;
  const share = (xM - a.xM) / (b.xM - a.xM);
  return a.values.map((value, i) => value + share * (b.values[i]! - value));
}
