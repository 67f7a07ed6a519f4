import type { BoardShape } from "../shape/BoardShape";
import { SIDES, type Side } from "../survey/Side";
import type { Face } from "./LayupPlan";
import type { Skin, SkinFace, SkinStation } from "./Skin";

/** Steps along the rail and the centreline, closer together towards the ends, where they turn fastest. */
const STEPS = 96;
/** Girths are slow to measure and change slowly along the board: one for every third step. */
const STEPS_PER_GIRTH = 3;

/**
 * The areas, arcs and girths that cloth and resin are reckoned from. The whole of a face is the shape's own area with half of
 * the tail's flat end; girths at 33 stations share it out along the board. The rail's line and the centreline arcs are sums of
 * chords over 96 steps.
 */
export function computeSkin(shape: BoardShape): Skin {
  const { plan } = shape;
  const stationsXM = Array.from(
    { length: STEPS + 1 },
    (_, i) => (shape.lengthM / 2) * (1 - Math.cos((Math.PI * i) / STEPS)),
  );
  const stations = stationsXM
    .filter((_, i) => i % STEPS_PER_GIRTH === 0)
    .map((xM) => measureStation(shape, xM));
  const widest = measureStation(shape, plan.widthMaxFromTailM);
  const rails = SIDES.map((side) => measureRail(shape, side, stationsXM));
  const bottomM = sumChords(stationsXM.map((xM) => [xM, 0, shape.rockerM(xM)]));
  const deckM = sumChords(stationsXM.map((xM) => [xM, 0, shape.rockerM(xM) + shape.thicknessM(xM)]));
  return {
    stations,
    faces: {
      deck: measureFace(stations, widest, {
        face: "deck",
        areaM2: plan.deckAreaM2,
        arcM: deckM,
        endM2: plan.endAreaM2,
      }),
      bottom: measureFace(stations, widest, {
        face: "bottom",
        areaM2: plan.bottomAreaM2,
        arcM: bottomM,
        endM2: plan.endAreaM2,
      }),
    },
    lengthTapeM: plan.lengthTapeM,
    railLineM: rails.reduce((sumM, rail) => sumM + rail.lengthM, 0) + measureEnds(shape, stationsXM),
    halfWidthMaxM: Math.min(...rails.map((rail) => rail.halfWidthMaxM)),
  };
}

function measureStation(shape: BoardShape, xM: number): SkinStation {
  const notchM = shape.notchHalfWidthM(xM);
  const girthsM = (face: Face) =>
    [shape.girthM("left", face, xM) - notchM, shape.girthM("right", face, xM) - notchM] as const;
  return { tapeM: shape.tapeFromStraightM(xM), deck: girthsM("deck"), bottom: girthsM("bottom") };
}

function measureFace(
  stations: readonly SkinStation[],
  widest: SkinStation,
  of: { readonly face: Face; readonly areaM2: number; readonly arcM: number; readonly endM2: number },
): SkinFace {
  const across = (station: SkinStation) => station[of.face][0] + station[of.face][1];
  const acrossM = stations.map(across);
  let stripsM2 = 0;
  for (let i = 1; i < stations.length; i++) {
    stripsM2 += ((acrossM[i - 1]! + acrossM[i]!) / 2) * (stations[i]!.tapeM - stations[i - 1]!.tapeM);
  }
  return {
    areaM2: of.areaM2 + of.endM2 / 2,
    arcM: of.arcM,
    girthMaxM: Math.max(across(widest), ...acrossM),
    stripScale: of.areaM2 / stripsM2,
  };
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
