import { angle, length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

type Symmetry = NonNullable<Plan["shape"]>["symmetry"];

/** Within this the two sides are one to the eye and to the sander; a declared convention. */
export const TRUE_WITHIN_M = 0.001;
/** A best-fit centreline this near to the stringer lies on it; about 1 mm from end to end of a board. */
const ON_STRINGER_M = 0.0005;
const ON_STRINGER_RAD = 0.0005;

/** How true the board is, as a builder would say it; differences in millimetres in both systems. */
export function symmetryWords(symmetry: Symmetry, reader: Reader): string {
  const { worstM, worstFromTailM } = symmetry;
  const worst = showDifference(worstM, reader);
  const where = showQuantity(length(worstFromTailM), reader);
  if (Math.abs(worstM) < TRUE_WITHIN_M)
    return `Both sides agree within ${worst}; the most is at ${where} from the tail.`;
  const side = worstM > 0 ? "Left" : "Right";
  return `${side} side ${worst} fuller at ${where} from the tail.`;
}

/** Where the best-fit centreline runs against the stringer. */
export function centrelineWords(symmetry: Symmetry, reader: Reader): string {
  const { centrelineShiftM, centrelineSkewRad } = symmetry;
  if (Math.abs(centrelineShiftM) < ON_STRINGER_M && Math.abs(centrelineSkewRad) < ON_STRINGER_RAD) {
    return `The best-fit centreline lies on the stringer within ${showDifference(ON_STRINGER_M, reader)} at half length.`;
  }
  const toSide = (value: number): string => (value > 0 ? "left" : "right");
  const skew = showQuantity(angle(Math.abs(centrelineSkewRad), "fine"), reader);
  return `Best-fit centreline: ${showDifference(centrelineShiftM, reader)} to the ${toSide(centrelineShiftM)} of the stringer at half length, nose end turned ${skew} to the ${toSide(centrelineSkewRad)}.`;
}

function showDifference(valueM: number, reader: Reader): string {
  return showQuantity(length(Math.abs(valueM)), { ...reader, units: "mm" });
}
