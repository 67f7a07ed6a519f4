import { CLOTHS } from "../constants/cloths";
import { angle, area, arealMass, count, length, mass } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { LayupPlan, PiecePlan } from "./LayupPlan";

/** How the size, area and mass of a piece of cloth come about. */
export const piecesWorking: WorkingTable<LayupContext> = {
  "layup.pieces[].lengthM": {
    words: "cut length: the face's arc and a lap at both ends; for a patch from its start to its end",
    formula: "arc + 2 lap, or to − from",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ arcM, lapM }) => [
        { name: "arc", value: length(arcM) },
        { name: "lap", value: length(lapM) },
      ]),
    ]),
  },
  "layup.pieces[].widthM": {
    words: "cut width: the face's widest girth and both laps; for a patch its own width or the girth",
    formula: "girth + 2 lap, or the patch's widest place",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ girthMaxM, lapM }) => [
        { name: "girth", value: length(girthMaxM) },
        { name: "lap", value: length(lapM) },
      ]),
    ]),
  },
  "layup.pieces[].areaM2": {
    words:
      "surface that the cloth lies on: its face and the lap strip around the rail; for a patch girth times arc",
    formula: "A = A_face + lap × rail line, or Σ girth × Δs",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ areaM2 }) => [{ name: "face", value: area(areaM2) }]),
      { name: "lap strip", value: area(piece.lapAreaM2) },
    ]),
  },
  "layup.pieces[].lapAreaM2": {
    words:
      "the strip beyond the rail's widest line; its overlap with itself at nose and tail is counted as cloth",
    formula: "lap × rail line",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listFace(piece, layup, ({ lapM }) => [{ name: "lap", value: length(lapM) }]),
      { name: "rail line", value: length(layup.railLineM) },
    ]),
  },
  "layup.pieces[].clothMassKg": {
    words: "dry cloth of this piece",
    formula: "m = areal mass × area",
    sources: ["mass-balance", "nist-811"],
    inputs: pieceInputs((piece) => [
      { name: piece.cloth, value: arealMass(CLOTHS[piece.cloth]?.arealMassKgM2.value ?? 0) },
      { name: "area", value: area(piece.areaM2) },
    ]),
  },
  "layup.pieces[].resinMassKg": {
    words: "resin that this piece holds once cured; foam, cup and squeegee stand with the coat",
    formula: "m = ratio × cloth",
    sources: ["resin-glass-chart", "mass-balance"],
    inputs: pieceInputs((piece, layup) => [
      { name: "ratio", value: count(layup.resinRatio) },
      { name: "cloth", value: mass(piece.clothMassKg) },
    ]),
  },
  "layup.pieces[].extent.fromTailTapeM": extentWorking(
    "where the patch begins, along the bottom from the tail",
  ),
  "layup.pieces[].extent.toTapeM": extentWorking("where the patch ends, along the bottom from the tail"),
  "layup.pieces[].extent.angleRad": extentWorking("the warp against the stringer; nought where not given"),
};

function extentWorking(words: string): WorkingTable<LayupContext>[string] {
  return {
    words,
    formula: "as given; within a millimetre of the nose it ends at the nose",
    sources: ["convention"],
    inputs: pieceInputs((piece) => [
      ...listExtent(piece),
      ...(piece.extent === null ? [] : [{ name: "angle", value: angle(piece.extent.angleRad) }]),
    ]),
  };
}

function pieceInputs(list: (piece: PiecePlan, layup: LayupPlan) => readonly WorkingInput[]) {
  return fromLayup((layup, [id]) => byId(layup.pieces, id, (piece) => list(piece, layup)));
}

/** A full layer shows its face's measures; a patch has none of them. */
function listFace(
  piece: PiecePlan,
  layup: LayupPlan,
  list: (face: LayupPlan["faces"][number]) => readonly WorkingInput[],
): readonly WorkingInput[] {
  return piece.extent === null ? byId(layup.faces, piece.face, list) : [];
}

function listExtent({ extent }: PiecePlan): WorkingInput[] {
  if (extent === null) return [];
  return [
    { name: "from", value: length(extent.fromTailTapeM) },
    { name: "to", value: length(extent.toTapeM) },
  ];
}
