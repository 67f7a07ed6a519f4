import type { BlankInput, FaceLayersInput, GlassInput, PatchInput } from "@lapline/engine";
import type { BlankFile, FaceLayersFile, GlassFile, PatchFile, TintFile } from "../file/GlassFile";
import { angleRad, asIs, given, lengthM, massKg, share } from "./given";

export function blankFromFile(file: BlankFile): BlankInput {
  return {
    foam: file.foam,
    ...given("stringer", file.stringer, (stringer) => ({
      thicknessM: lengthM(stringer.thickness),
      ...given("wood", stringer.wood, asIs),
      ...given("proudM", stringer.proud, lengthM),
    })),
    ...given("vent", file.vent, asIs),
    ...given("shapedMassKg", file.shapedMass, massKg),
  };
}

export function glassFromFile(file: GlassFile): GlassInput {
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
    ...given("tint", file.tint, tintFromFile),
    ...given("fillers", file.fillers, asIs),
    ...given("logos", file.logos, asIs),
    ...given("pinline", file.pinline, asIs),
    ...given("finish", file.finish, asIs),
    ...given("papers", file.papers, (papers) => ({
      ...given("dry", papers.dry, asIs),
      ...given("wet", papers.wet, asIs),
    })),
  };
}

function tintFromFile(file: TintFile) {
  return {
    ...given("of", file.of, asIs),
    ...given("laminate", file.laminate, share),
    ...given("fill", file.fill, share),
    ...given("gloss", file.gloss, share),
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
    ...given("over", file.over, asIs),
    ...given("fromTailM", file.fromTail, lengthM),
    ...given("toM", file.to, lengthM),
    ...given("widthM", file.width, lengthM),
    ...given("angleRad", file.angle, angleRad),
  };
}
