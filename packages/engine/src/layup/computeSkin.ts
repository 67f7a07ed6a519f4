import type { BoardShape } from "../shape/BoardShape";
import type { Side } from "../survey/Side";
import type { Face } from "./LayupPlan";
import type { Skin, SkinFace, SkinStation } from "./Skin";

/** Closer together towards the ends, where girth and rail turn fastest. */
const CELLS = 96;

/**
 * The areas, arcs and girths that cloth and resin are reckoned from. The whole of a face is the shape's own area with half of
 * the tail's flat end; the girths at 97 stations share it out along the board. The rail's line and the centreline arcs are sums
 * of chords between those stations.
 */
export function computeSkin(shape: BoardShape): Skin {
  const stationsXM = Array.from(
    { length: CELLS + 1 },
    (_, i) => (shape.lengthM / 2) * (1 - Math.cos((Math.PI * i) / CELLS)),
  );
  const stations = stationsXM.map((xM) => measureStation(shape, xM));
  const { plan } = shape;
  const halfWidths = (side: Side) => Math.max(...stationsXM.map((xM) => shape.halfWidthM(side, xM)));
  return {
    stations,
    faces: {
      deck: measureFace(shape, { face: "deck", areaM2: plan.deckAreaM2, stationsXM, stations }),
      bottom: measureFace(shape, { face: "bottom", areaM2: plan.bottomAreaM2, stationsXM, stations }),
    },
    lengthTapeM: plan.lengthTapeM,
    railLineM: measureRailLine(shape, stationsXM),
    halfWidthMaxM: Math.min(halfWidths("left"), halfWidths("right")),
  };
}

function measureStation(shape: BoardShape, xM: number): SkinStation {
  const notchM = shape.notchHalfWidthM(xM);
  const girthsM = (face: Face) =>
    [shape.girthM("left", face, xM) - notchM, shape.girthM("right", face, xM) - notchM] as const;
  return { tapeM: shape.tapeFromStraightM(xM), deck: girthsM("deck"), bottom: girthsM("bottom") };
}

function measureFace(
  shape: BoardShape,
  measured: {
    readonly face: Face;
    readonly areaM2: number;
    readonly stationsXM: readonly number[];
    readonly stations: readonly SkinStation[];
  },
): SkinFace {
  const { face, areaM2, stationsXM, stations } = measured;
  const heightM = face === "deck" ? shape.deckHeightM : shape.bottomHeightM;
  let stripsM2 = 0;
  for (let i = 1; i < stations.length; i++) {
    const across = acrossM(stations[i - 1]!, face) + acrossM(stations[i]!, face);
    stripsM2 += (across / 2) * (stations[i]!.tapeM - stations[i - 1]!.tapeM);
  }
  return {
    areaM2: areaM2 + shape.plan.endAreaM2 / 2,
    arcM: sumChords(stationsXM.map((xM) => [xM, 0, heightM.call(shape, "left", xM, 0)])),
    girthMaxM: Math.max(...stations.map((station) => acrossM(station, face))),
    stripScale: areaM2 / stripsM2,
  };
}

function acrossM(station: SkinStation, face: Face): number {
  return station[face][0] + station[face][1];
}

/** Both rails in space, the flat ends square across, and the two edges of a notch. */
function measureRailLine(shape: BoardShape, stationsXM: readonly number[]): number {
  const railM = (side: Side) =>
    sumChords(
      stationsXM.map((xM) => {
        const halfM = shape.halfWidthM(side, xM);
        return [xM, halfM, shape.bottomHeightM(side, xM, halfM)];
      }),
    );
  const endM = (xM: number) => shape.halfWidthM("left", xM) + shape.halfWidthM("right", xM);
  const inNotch = stationsXM.filter((xM) => shape.notchHalfWidthM(xM) > 0);
  const notchM = 2 * sumChords(inNotch.map((xM) => [xM, shape.notchHalfWidthM(xM), 0]));
  const tailEndM = endM(0) - 2 * shape.notchHalfWidthM(0);
  return railM("left") + railM("right") + tailEndM + endM(shape.lengthM) + notchM;
}

function sumChords(points: ReadonlyArray<readonly [number, number, number]>): number {
  let sumM = 0;
  for (let i = 1; i < points.length; i++) {
    const [fromX, fromY, fromZ] = points[i - 1]!;
    const [toX, toY, toZ] = points[i]!;
    sumM += Math.sqrt((toX - fromX) ** 2 + (toY - fromY) ** 2 + (toZ - fromZ) ** 2);
  }
  return sumM;
}
