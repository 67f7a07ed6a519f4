import type { BoardShape } from "../shape/BoardShape";
import type { FinSpot } from "./FinSpot";
import { spotSide } from "./FinSpot";
import type { SidesComparedPlan } from "./FinsetPlan";
import type { SidesRule } from "./FinsInput";
import { type PlacedFins, type PlaceRequest, placeFins } from "./placeFins";
import { buildSetOutLine, computeRailM, placeOnBoard, type SetOutLine } from "./SetOutLine";

const RULES: readonly SidesRule[] = ["average", "rail", "centreline"];

/**
 * Gives what each side would read from its own rail and from the stringer under each of the three rules.
 * @param placed the fins as placed under the rule in force
 */
export function compareSides(
  shape: BoardShape,
  request: PlaceRequest,
  placed: PlacedFins,
): readonly SidesComparedPlan[] {
  return RULES.map((sides) => {
    const isInForce = sides === request.sides;
    const line = isInForce ? request.line : buildSetOutLine(shape, sides);
    const { spots, ownRails } = isInForce ? placed : placeFins({ ...request, sides, line });
    return {
      id: sides,
      asymmetryM: Math.max(0, ...ownRails.map(({ leftM, rightM }) => Math.abs(leftM - rightM))),
      pairs: ownRails.flatMap(({ fin }) => comparePair(line, spots, fin)),
    };
  });
}

function comparePair(line: SetOutLine, spots: readonly FinSpot[], fin: string): SidesComparedPlan["pairs"] {
  const left = readSide(
    line,
    spots.find(({ id }) => id === `${fin}-left`),
  );
  const right = readSide(
    line,
    spots.find(({ id }) => id === `${fin}-right`),
  );
  if (left === null || right === null) return [];
  return [
    {
      id: fin,
      leftFromRailM: left.fromRailM,
      rightFromRailM: right.fromRailM,
      leftFromStringerM: left.fromStringerM,
      rightFromStringerM: right.fromStringerM,
      leftToeRad: left.toeRad,
      rightToeRad: right.toeRad,
      fromStringerDifferM: left.fromStringerM - right.fromStringerM,
      fromRailDifferM: left.fromRailM - right.fromRailM,
    },
  ];
}

function readSide(line: SetOutLine, spot: FinSpot | undefined) {
  if (spot === undefined) return null;
  const side = spotSide(spot);
  const railM = computeRailM(line, side, spot.uM);
  if (railM === null) return null;
  const at = placeOnBoard(line, side, spot.uM, spot.vM);
  return { fromRailM: railM - spot.vM, fromStringerM: Math.abs(at.yM), toeRad: spot.toeRad };
}
