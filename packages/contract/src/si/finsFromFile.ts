import type { AsSetInput, BoxInput, FinInput, FinsInput, LeashPlugInput, ToeInput } from "@lapline/engine";
import type {
  AsSetFile,
  BoxFile,
  FinFile,
  FinsFile,
  LeashPlugFile,
  PlaceFile,
  ToeFile,
} from "../file/FinsFile";
import { angleRad, asIs, given, lengthM, share } from "./given";
import { verifyFromFile } from "./verifyFromFile";

export function finsFromFile(file: FinsFile): FinsInput {
  return {
    arrangement: file.arrangement,
    ...given("sides", file.sides, asIs),
    ...given("boxes", file.boxes, asIs),
    ...given("fromTailBy", file.fromTailBy, asIs),
    ...given("fromTailOf", file.fromTailOf, asIs),
    ...given("toleranceM", file.tolerance, lengthM),
    set: file.set.map(finFromFile),
    ...given("leashPlug", file.leashPlug, leashPlugFromFile),
    ...given("asSet", file.asSet, (list) => list.map(asSetFromFile)),
    ...given("verify", file.verify, verifyFromFile),
  };
}

function finFromFile(file: FinFile): FinInput {
  return {
    fin: file.fin,
    fromTailM: lengthM(file.fromTail),
    ...given("fromRailM", file.fromRail, lengthM),
    ...given("fromRailBy", file.fromRailBy, asIs),
    baseM: lengthM(file.base),
    ...given("toe", file.toe, toeFromFile),
    ...given("cantRad", file.cant, angleRad),
    ...given("depthM", file.depth, lengthM),
    ...given("sweepRad", file.sweep, angleRad),
    ...given("foil", file.foil, (foil) => ({
      kind: foil.kind,
      ...given("thickness", foil.thickness, share),
    })),
    ...given("box", file.box, boxFromFile),
  };
}

function toeFromFile(file: ToeFile): ToeInput {
  if (file.aimBesideNose !== undefined)
    return { kind: "aimBesideNose", offsetM: lengthM(file.aimBesideNose) };
  if (file.aimBeyondNose !== undefined)
    return { kind: "aimBeyondNose", beyondM: lengthM(file.aimBeyondNose) };
  if (file.overBase !== undefined) return { kind: "overBase", overM: lengthM(file.overBase) };
  if (file.angle !== undefined) return { kind: "angle", angleRad: angleRad(file.angle) };
  if (file.meets !== undefined) return { kind: "meets", fin: file.meets };
  throw new RangeError("toe is stated in one way, and here in none");
}

function boxFromFile(file: BoxFile): BoxInput {
  return {
    lengthM: lengthM(file.length),
    widthM: lengthM(file.width),
    depthM: lengthM(file.depth),
    ...given("behindTrailingM", file.behindTrailing, lengthM),
  };
}

function leashPlugFromFile(file: LeashPlugFile): LeashPlugInput {
  return {
    fromTailM: lengthM(file.fromTail),
    fromCentrelineM: lengthM(file.fromCentreline),
    ...given("side", file.side, asIs),
    ...given("diameterM", file.diameter, lengthM),
    ...given("depthM", file.depth, lengthM),
  };
}

function asSetFromFile(file: AsSetFile): AsSetInput {
  return {
    fin: file.fin,
    ...given("side", file.side, asIs),
    ...given("on", file.on, asIs),
    ...given("trailing", file.trailing, placeFromFile),
    ...given("leading", file.leading, placeFromFile),
    ...given("cantRad", file.cant, angleRad),
  };
}

function placeFromFile(file: PlaceFile): { readonly fromTailM?: number; readonly fromCentrelineM?: number } {
  return {
    ...given("fromTailM", file.fromTail, lengthM),
    ...given("fromCentrelineM", file.fromCentreline, lengthM),
  };
}
