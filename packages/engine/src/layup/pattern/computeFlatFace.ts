import type { BoardShape } from "../../shape/BoardShape";
import { pointsAlong } from "../../shape/stationsAlong";
import type { Side } from "../../survey/Side";
import type { FlatEnd, FlatFace, FlatStation } from "./FlatFace";

/** Girths are slow to measure: this many strips, closer together towards the ends, each of four chords of the centreline. */
const STRIPS = 36;
const CHORDS_A_STRIP = 4;
const END_STEPS = 12;
/** An end narrower than this to a side is a point, and has no wall to cover. */
const POINT_M = 0.003;

/**
 * One face rolled out: half-widths from the section's arc from the centreline to the rail's widest line, lengths from the arc of the
 * rocker. True where the skin bends one way only; where it bends both ways cloth has to shear, and that is not reckoned.
 */
export function computeFlatFace(shape: BoardShape, face: "deck" | "bottom"): FlatFace {
  const chordsXM = pointsAlong(shape.lengthM, STRIPS * CHORDS_A_STRIP);
  const heightM = (xM: number) => shape.rockerM(xM) + (face === "deck" ? shape.thicknessM(xM) : 0);
  const stations: FlatStation[] = [];
  let alongM = 0;
  let crotchM = 0;
  let beforeM = heightM(0);
  chordsXM.forEach((xM, i) => {
    const zM = heightM(xM);
    if (i > 0) alongM += Math.hypot(xM - chordsXM[i - 1]!, zM - beforeM);
    beforeM = zM;
    if (shape.notchHalfWidthM(xM) > 0) crotchM = alongM;
    if (i % CHORDS_A_STRIP !== 0) return;
    stations.push({
      tapeM: shape.tapeFromStraightM(xM),
      alongM,
      leftM: shape.girthM("left", face, xM),
      rightM: shape.girthM("right", face, xM),
    });
  });
  return {
    face,
    stations,
    tail: measureEnd(shape, face, 0),
    nose: measureEnd(shape, face, shape.lengthM),
    crotchM,
  };
}

function measureEnd(shape: BoardShape, face: "deck" | "bottom", xM: number): FlatEnd {
  const on = (side: Side) => {
    const halfM = shape.halfWidthM(side, xM);
    if (halfM - shape.notchHalfWidthM(xM) < POINT_M) return [];
    const apexM = shape.bottomHeightM(side, xM, halfM);
    return Array.from({ length: END_STEPS + 1 }, (_, i) => {
      const acrossM = halfM * Math.cos((Math.PI / 2) * (i / END_STEPS));
      const edgeM =
        face === "deck" ? shape.deckHeightM(side, xM, acrossM) : shape.bottomHeightM(side, xM, acrossM);
      return { acrossM, deepM: Math.abs(edgeM - apexM) };
    });
  };
  return { left: on("left"), right: on("right") };
}
