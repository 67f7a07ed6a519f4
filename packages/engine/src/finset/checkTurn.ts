import { USUAL_TOE } from "../constants/finLimits";
import { say } from "../foundation/phrase";
import { angle } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { FinSpot } from "./FinSpot";

/** Arithmetic in doubles: a fin stated as parallel is. */
const ROUND_OFF_RAD = 1e-9;

/**
 * Questions a fin that points out, or in by more than is common, in whatever way that was stated.
 * @param who the name the fin goes by in what is said
 */
export function checkTurn({ side, toeRad, path }: FinSpot, who: string): readonly Finding[] {
  const { lowRad, highRad } = USUAL_TOE;
  if (side === "centre" || (toeRad >= lowRad - ROUND_OFF_RAD && toeRad <= highRad + ROUND_OFF_RAD)) return [];
  const says =
    toeRad < 0
      ? say`the ${who} fin points out by ${angle(-toeRad)}: common practice is ${angle(lowRad)} to ${angle(highRad)} in, so look at its aim, its unit and its sign`
      : say`the ${who} fin points in by ${angle(toeRad)}: common practice is ${angle(lowRad)} to ${angle(highRad)}, so look at its aim, its unit and its distance from the rail`;
  return [finding("warning", "finset.toe-unusual", `${path}.toe`, says)];
}
