import type { BoardShape } from "../shape/BoardShape";
import { pointsAlong } from "../shape/stationsAlong";
import { SIDES, type Side } from "../survey/Side";
import type { Face } from "./LayupPlan";
import { measureStation, measureStrips } from "./measureStrips";
import { computeFlatFace } from "./pattern/computeFlatFace";
import type { Skin, SkinFace } from "./Skin";

/** Steps along the rail and the centreline, closer together towards the ends, where they turn fastest. */
const STEPS = 96;

/**
 * The areas, arcs and girths that cloth and resin are reckoned from. The whole of a face is the shape's own area with half of
 * the tail's flat end. The rail's line and the centreline arcs are sums of chords over 96 steps. The widest girth is the largest
 * of three: where the board is widest, where it is thickest, and half-way between.
 * @param patched faces whose area is shared out along the board, for patches
 */
export function computeSkin(shape: BoardShape, patched: readonly Face[] = []): Skin {
  const { plan } = shape;
  const stationsXM = pointsAlong(shape.lengthM, STEPS);
  const rails = SIDES.map((side) => measureRail(shape, side, stationsXM));
  const faceOf = (face: Face, areaM2: number, heightM: (xM: number) => number): SkinFace => ({
    areaM2: areaM2 + plan.endAreaM2 / 2,
    arcM: sumChords(stationsXM.map((xM) => [xM, 0, heightM(xM)])),
    girthMaxM: measureGirthMax(shape, face),
    flat: computeFlatFace(shape, face),
    strips: patched.includes(face) ? measureStrips(shape, face) : null,
  });
  return {
    faces: {
      bottom: faceOf("bottom", plan.bottomAreaM2, (xM) => shape.rockerM(xM)),
      deck: faceOf("deck", plan.deckAreaM2, (xM) => shape.rockerM(xM) + shape.thicknessM(xM)),
    },
    lengthTapeM: plan.lengthTapeM,
    railLineM: rails.reduce((sumM, rail) => sumM + rail.lengthM, 0) + measureEnds(shape, stationsXM),
    halfWidthMaxM: Math.min(...rails.map((rail) => rail.halfWidthMaxM)),
  };
}

function measureGirthMax(shape: BoardShape, face: Face): number {
  const { widthMaxFromTailM, thicknessMaxFromTailM } = shape.plan;
  const placesM = [widthMaxFromTailM, (widthMaxFromTailM + thicknessMaxFromTailM) / 2, thicknessMaxFromTailM];
  const acrossM = placesM.map((xM) => measureStation(shape, face, xM));
  return Math.max(...acrossM.map(({ leftM, rightM }) => leftM + rightM));
}

/** One rail's widest line in space, at the height where deck and bottom meet. */
function measureRail(shape: BoardShape, side: Side, stationsXM: readonly number[]) {
  const halfWidthsM = stationsXM.map((xM) => shape.halfWidthM(side, xM));
  const points = stationsXM.map((xM, i): Point => {
    const halfM = halfWidthsM[i]!;
    return [xM, halfM, shape.bottomHeightM(side, xM, halfM)];
  });
  return { lengthM: sumChords(points), halfWidthMaxM: Math.max(...halfWidthsM) };
}

/** The flat ends square across, less a swallow's notch, and the notch's two edges. */
function measureEnds(shape: BoardShape, stationsXM: readonly number[]): number {
  const acrossM = (xM: number) => shape.halfWidthM("left", xM) + shape.halfWidthM("right", xM);
  const inNotch = stationsXM.filter((xM) => shape.notchHalfWidthM(xM) > 0);
  const notchM = 2 * sumChords(inNotch.map((xM) => [xM, shape.notchHalfWidthM(xM), 0]));
  return acrossM(0) - 2 * shape.notchHalfWidthM(0) + acrossM(shape.lengthM) + notchM;
}

type Point = readonly [xM: number, yM: number, zM: number];

function sumChords(points: readonly Point[]): number {
  let sumM = 0;
  for (let i = 1; i < points.length; i++) {
    const [fromX, fromY, fromZ] = points[i - 1]!;
    const [toX, toY, toZ] = points[i]!;
    sumM += Math.sqrt((toX - fromX) ** 2 + (toY - fromY) ** 2 + (toZ - fromZ) ** 2);
  }
  return sumM;
}
