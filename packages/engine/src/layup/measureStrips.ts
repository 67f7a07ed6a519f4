import type { BoardShape } from "../shape/BoardShape";
import { pointsAlong } from "../shape/stationsAlong";
import type { Face } from "./LayupPlan";
import type { SkinStation, Strips } from "./Skin";

const STRIPS = 32;

/** The girths of a face at 33 stations, closer together towards the ends, and what the strips between them add up to. */
export function measureStrips(shape: BoardShape, face: Face): Strips {
  const stations = pointsAlong(shape.lengthM, STRIPS).map((xM) => measureStation(shape, face, xM));
  let stripsM2 = 0;
  for (let i = 1; i < stations.length; i++) {
    const before = stations[i - 1]!;
    const after = stations[i]!;
    const acrossM = (before.leftM + before.rightM + after.leftM + after.rightM) / 2;
    stripsM2 += acrossM * (after.tapeM - before.tapeM);
  }
  const areaM2 = face === "deck" ? shape.plan.deckAreaM2 : shape.plan.bottomAreaM2;
  return { stations, scale: areaM2 / stripsM2 };
}

export function measureStation(shape: BoardShape, face: Face, xM: number): SkinStation {
  const notchM = shape.notchHalfWidthM(xM);
  return {
    tapeM: shape.tapeFromStraightM(xM),
    leftM: shape.girthM("left", face, xM) - notchM,
    rightM: shape.girthM("right", face, xM) - notchM,
  };
}
