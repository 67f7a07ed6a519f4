import { say } from "../foundation/phrase";
import { count, volume } from "../foundation/quantity";
import { finding, type Stage } from "../foundation/stage";
import { computeBand } from "../layup/computeBand";
import type { BlankBoard } from "../layup/GlassInput";
import { findFoamIn } from "../materials/listBlanks";
import type { BoardShape } from "../shape/BoardShape";
import { computeProfileArea } from "./computeProfileArea";
import { resolveStringer } from "./resolveStringer";

/** The volume that the weighed blank and the foam's density make, beside the volume by shape. */
export interface ByWeightPlan {
  readonly volumeM3: number;
  readonly volumeLowM3: number;
  readonly volumeHighM3: number;
  /** The deck fullness that would make both agree; null where none between the bounds does. */
  readonly deckFullness: number | null;
}

/** Decks fall between these (declared convention): 1 is a gable, 8 all but a box. */
const LEAST_FULLNESS = 1;
const MOST_FULLNESS = 8;
const HALVINGS = 40;

/**
 * Holds the scale against the tape: the blank's mass less its stringer over the foam's density, and what deck fullness
 * would make the shape hold as much. A finding to look at, never applied.
 * Returns null without finding where the blank was not weighed or its foam is not known, and where it is lighter than its
 * stringer, which `buildWeight` refuses, with or without glass.
 */
export function compareByWeight(
  { blank, materials }: BlankBoard,
  shape: BoardShape | null,
): Stage<ByWeightPlan> {
  const nothing = { value: null, findings: [], assumptions: [] };
  if (blank?.shapedMassKg === undefined || shape === null) return nothing;
  const foam = findFoamIn(materials, blank.foam);
  const stringer = resolveStringer(blank, materials).value;
  if (foam === null || stringer === null) return nothing;
  const stringerM3 = stringer.thicknessM * computeProfileArea(shape);
  const massKg = blank.shapedMassKg;
  if (!(massKg > stringerM3 * stringer.woodDensityKgM3.value)) return nothing;
  const { value, low, high } = computeBand(
    { foamDensityKgM3: foam.densityKgM3, woodDensityKgM3: stringer.woodDensityKgM3 },
    ({ foamDensityKgM3, woodDensityKgM3 }) =>
      (massKg - stringerM3 * woodDensityKgM3) / foamDensityKgM3 + stringerM3,
  );
  const deckFullness = findFullness(shape, value);
  const agree =
    deckFullness === null
      ? say`no deck fullness would make the two agree: look at the scale, the foam's density or the readings`
      : say`a deck fullness of ${count(deckFullness)} would make the two agree; it is not applied`;
  const { volumeM3, volumeLowM3, volumeHighM3 } = shape.plan;
  const apart = low > volumeHighM3 || high < volumeLowM3;
  const says = say`by the scale the blank holds ${volume(value)} (${volume(low)} to ${volume(high)}), by its shape ${volume(volumeM3)}; ${agree}`;
  return {
    value: { volumeM3: value, volumeLowM3: low, volumeHighM3: high, deckFullness },
    findings: [finding(apart ? "warning" : "note", "weight.by-scale", "blank.shapedMass", says)],
    assumptions: [],
  };
}

/** Volume grows with the fullness, so halving the interval finds it. */
function findFullness(shape: BoardShape, volumeM3: number): number | null {
  if (volumeM3 < shape.volumeAtDeckFullnessM3(LEAST_FULLNESS)) return null;
  if (volumeM3 > shape.volumeAtDeckFullnessM3(MOST_FULLNESS)) return null;
  let [low, high] = [LEAST_FULLNESS, MOST_FULLNESS];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (shape.volumeAtDeckFullnessM3(middle) < volumeM3) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
