import type { BlankInput, FaceLayersInput, GlassInput, PatchInput } from "@lapline/engine";
import type { BlankFile, FaceLayersFile, GlassFile, PatchFile } from "../file/GlassFile";
import { angleRad, asIs, given, lengthM, massKg } from "./given";

export function blankFromFile(file: BlankFile): BlankInput {
  return {
    foam: file.foam,
    ...given("stringer", file.stringer, (stringer) => ({
      thicknessM: lengthM(stringer.thickness),
      ...given("wood", stringer.wood, asIs),
    })),
    ...given("shapedMassKg", file.shapedMass, massKg),
  };
}

export function glassFromFile(file: GlassFile): NonNullable<Board["glass"]> {
  return {
    ...given("resin", file.resin, asIs),
    ...given("boxResin", file.boxResin, asIs),
    ...given("resinRatio", file.resinRatio, asIs),
    ...given("seal", file.seal, asIs),
    ...given("lapKind", file.lapKind, asIs),
    ...given("cutting", file.cutting, asIs),
    ...given("bottom", file.bottom, layersFromFile),
    ...given("deck", file.deck, layersFromFile),
    ...given("patches", file.patches, (patches) => patches.map(patchFromFile)),
    ...given("finish", file.finish, asIs),
  };
}

function layersFromFile(file: FaceLayersFile): FaceLayersInput {
  return {
    layers: file.layers,
    ...given("lapM", file.lap, lengthM),
    ...given("lapsM", file.laps, (laps) => laps.map(lengthM)),
  };
}

function patchFromFile(file: PatchFile): PatchInput {
  return {
    face: file.face,
    cloth: file.cloth,
    fromTailM: lengthM(file.fromTail),
    toM: lengthM(file.to),
    ...given("widthM", file.width, lengthM),
    ...given("angleRad", file.angle, angleRad),
  };
}
