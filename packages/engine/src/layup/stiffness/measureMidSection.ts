import type { BoardShape } from "../../shape/BoardShape";
import { SIDES } from "../../survey/Side";
import type { Face } from "../LayupPlan";

/** A strip of skin along the board, amidships. */
export interface SkinStrip {
  readonly face: Face;
  /** Height of its middle over the bottom's centreline. */
  readonly heightM: number;
  readonly acrossM: number;
  /** Along the skin from its middle to the centreline and to the rail's widest line. */
  readonly fromCentreM: number;
  readonly fromRailM: number;
}

/** A slice of foam from bottom to deck. */
interface FoamSlice {
  readonly acrossM: number;
  readonly lowM: number;
  readonly highM: number;
}

export interface MidSection {
  readonly tapeM: number;
  readonly strips: readonly SkinStrip[];
  readonly foam: readonly FoamSlice[];
  /** At the centreline, where the stringer stands. */
  readonly thicknessM: number;
}

const STEPS = 24;

/** The section where the board is thickest, in strips closer together towards the rails. */
export function measureMidSection(shape: BoardShape): MidSection {
  const xM = shape.plan.thicknessMaxFromTailM;
  const baseM = shape.rockerM(xM);
  const strips: SkinStrip[] = [];
  const foam: FoamSlice[] = [];
  for (const side of SIDES) {
    const halfM = shape.halfWidthM(side, xM);
    const ysM = Array.from({ length: STEPS + 1 }, (_, i) => halfM * Math.sin((Math.PI / 2) * (i / STEPS)));
    const deckM = ysM.map((yM) => shape.deckHeightM(side, xM, yM) - baseM);
    const bottomM = ysM.map((yM) => shape.bottomHeightM(side, xM, yM) - baseM);
    strips.push(...listStrips("deck", ysM, deckM), ...listStrips("bottom", ysM, bottomM));
    for (let i = 1; i < ysM.length; i++) {
      foam.push({
        acrossM: ysM[i]! - ysM[i - 1]!,
        lowM: (bottomM[i]! + bottomM[i - 1]!) / 2,
        highM: (deckM[i]! + deckM[i - 1]!) / 2,
      });
    }
  }
  return { tapeM: shape.tapeFromStraightM(xM), strips, foam, thicknessM: shape.thicknessM(xM) };
}

function listStrips(face: Face, ysM: readonly number[], zsM: readonly number[]): SkinStrip[] {
  let fromCentreM = 0;
  const outwards = ysM.slice(1).map((yM, i) => {
    const acrossM = Math.hypot(yM - ysM[i]!, zsM[i + 1]! - zsM[i]!);
    fromCentreM += acrossM;
    return { heightM: (zsM[i]! + zsM[i + 1]!) / 2, acrossM, fromCentreM: fromCentreM - acrossM / 2 };
  });
  return outwards.map((strip) => ({ face, ...strip, fromRailM: fromCentreM - strip.fromCentreM }));
}
