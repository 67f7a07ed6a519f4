import type { BoardShape } from "../shape/BoardShape";
import { spotSide } from "./FinSpot";
import type { SidesComparedPlan } from "./FinsetPlan";
import { SIDES_RULES, type SidesRule } from "./FinsInput";
import { type PlacedFins, type PlaceRequest, placeFins } from "./placeFins";
import { buildSetOutLine, computeRailM, placeOnBoard, type SetOutLine } from "./SetOutLine";

/**
 * Gives what each side would read from its own rail and from the stringer under each of the three rules, and how far each
 * mark would move.
 * @param placed the fins as placed under the rule in force
 */
export function compareSides(
  shape: BoardShape,
  request: PlaceRequest,
  placed: PlacedFins,
): readonly SidesComparedPlan[] {
  const inForce: Laid = { line: request.line, placed };
  return SIDES_RULES.map((sides) => {
    const laid = sides === request.sides ? inForce : layOutBy(shape, request, sides);
    const { ownRails } = laid.placed;
    return {
      id: sides,
      asymmetryM: Math.max(0, ...ownRails.map(({ leftM, rightM }) => Math.abs(leftM - rightM))),
      pairs: ownRails.flatMap(({ fin }) => comparePair(laid, inForce, fin)),
    };
  });
}

interface Laid {
  readonly line: SetOutLine;
  readonly placed: PlacedFins;
}

function layOutBy(shape: BoardShape, request: PlaceRequest, sides: SidesRule): Laid {
  const line = buildSetOutLine(shape, sides);
  return { line, placed: placeFins({ ...request, sides, line }) };
}

function comparePair(laid: Laid, inForce: Laid, fin: string): SidesComparedPlan["pairs"] {
  const left = readSide(laid, `${fin}-left`);
  const right = readSide(laid, `${fin}-right`);
  const leftNow = readSide(inForce, `${fin}-left`);
  const rightNow = readSide(inForce, `${fin}-right`);
  if (left === null || right === null || leftNow === null || rightNow === null) return [];
  return [
    {
      id: fin,
      leftFromRailM: left.fromRailM,
      rightFromRailM: right.fromRailM,
      leftFromStringerM: left.fromStringerM,
      rightFromStringerM: right.fromStringerM,
      leftToeRad: left.toeRad,
      rightToeRad: right.toeRad,
      leftMovesM: left.fromStringerM - leftNow.fromStringerM,
      rightMovesM: right.fromStringerM - rightNow.fromStringerM,
      fromStringerDifferM: left.fromStringerM - right.fromStringerM,
      fromRailDifferM: left.fromRailM - right.fromRailM,
    },
  ];
}

function readSide({ line, placed }: Laid, id: string) {
  const spot = placed.spots.find((one) => one.id === id);
  if (spot === undefined) return null;
  const side = spotSide(spot);
  const railM = computeRailM(line, side, spot.uM);
  if (railM === null) return null;
  const at = placeOnBoard(line, side, spot.uM, spot.vM);
  return { fromRailM: railM - spot.vM, fromStringerM: Math.abs(at.yM), toeRad: spot.toeRad };
}
