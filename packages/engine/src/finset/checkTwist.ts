import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import { say } from "../foundation/phrase";
import { angle } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { radFromDegrees } from "../foundation/units";
import type { FinMark } from "./FinMark";

/** A twist that shows as nought in text. */
const NO_TWIST_RAD = radFromDegrees(0.05);

/** Says where a twisted or uneven bottom leans the two fins of a pair differently, though the gauge reads the same on both. */
export function checkTwist(marks: readonly FinMark[]): readonly Finding[] {
  return marks.flatMap((left) => {
    const right = marks.find(({ fin, side }) => fin === left.fin && side === "right");
    if (left.side !== "left" || right === undefined) return [];
    const differRad = left.trueCantRad - right.trueCantRad;
    if (Math.abs(differRad) <= SET_OUT_TOLERANCE.cantRad) return [];
    const share = angle(Math.abs(differRad) / 2);
    if (Math.abs(left.twistRad) < NO_TWIST_RAD) {
      const says = say`the bottom slopes ${angle(left.bottomTiltRad)} under the left ${left.fin} fin and ${angle(right.bottomTiltRad)} under the right one: set by the gauge to ${angle(left.cantRad)}, the left one leans ${angle(left.trueCantRad)} and the right one ${angle(right.trueCantRad)} against the board at half length; share the difference out by setting one ${share} more and the other as much less`;
      return [finding("warning", "finset.slope-in-cant", `finset.marks[${left.id}].trueCantRad`, says)];
    }
    return [
      finding(
        "warning",
        "finset.twist-in-cant",
        `finset.marks[${left.id}].trueCantRad`,
        say`the board is twisted by ${angle(left.twistRad)} at the ${left.fin} fins: set by the gauge to ${angle(left.cantRad)}, the left one leans ${angle(left.trueCantRad)} and the right one ${angle(right.trueCantRad)} against the board at half length; share the difference out by setting one ${share} more and the other as much less`,
      ),
    ];
  });
}
