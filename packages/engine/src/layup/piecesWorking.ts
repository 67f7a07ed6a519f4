import { OVERHANG_M } from "../constants/clothCutting";
import { SEAM_OVERLAP_M } from "../constants/rollCutting";
import { angle, area, arealMass, count, length, mass } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { listCloths } from "../materials/listCloths";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { LayupPlan, PiecePlan } from "./LayupPlan";

/** How the size, area and mass of a piece of cloth come about. */
export const piecesWorking: WorkingTable<LayupContext> = {
  "layup.pieces[].lengthM": {
    words:
      "cut length along the warp: the face's arc, its share of a flat end and a lap at both ends, and what hangs over where the cloth is rolled out; for a patch that of its flat shape",
    formula: "pattern's length (+ 2 overhang)",
    sources: ["geometry", OVERHANG_M.source],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ arcM }) => [{ name: "arc", value: length(arcM) }]),
      ...byId(layup.patterns, piece.pattern, ({ lengthM }) => [
        { name: "pattern", value: length(lengthM) },
        { name: "hangs over at each end", value: length(piece.extent === null ? hangsOver(layup) : 0) },
      ]),
    ]),
  },
  "layup.pieces[].widthM": {
    words:
      "cut width across the warp: the face's widest girth and both laps; for a patch that of its flat shape",
    formula: "pattern's width",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ girthMaxM }) => [{ name: "girth", value: length(girthMaxM) }]),
      ...byId(layup.patterns, piece.pattern, ({ widthM }) => [{ name: "pattern", value: length(widthM) }]),
    ]),
  },
  "layup.pieces[].areaM2": {
    words:
      "surface that the cloth lies on: its face, the lap strip around the rail and what lies double at a seam; for a patch girth times arc",
    formula: "A = A_face + lap × rail line + seam, or Σ girth × Δs",
    sources: ["geometry"],
    inputs: pieceInputs((piece, layup) => [
      ...listExtent(piece),
      ...listFace(piece, layup, ({ areaM2 }) => [{ name: "face", value: area(areaM2) }]),
      { name: "lap strip", value: area(piece.lapAreaM2) },
      { name: "seam", value: area(piece.seamAreaM2) },
    ]),
  },
  "layup.pieces[].seamAreaM2": {
    words: "what lies double along the stringer where the roll is narrower than the piece",
    formula: "overlap × pattern's length; nought where the piece fits its roll",
    sources: ["geometry", SEAM_OVERLAP_M.source],
    inputs: pieceInputs((piece, layup, { board }) => [
      ...byId(layup.patterns, piece.pattern, ({ lengthM, widthM }) => [
        { name: "pattern's length", value: length(lengthM) },
        { name: "pattern's width", value: length(widthM) },
      ]),
      { name: "roll's width", value: length(rollWidthOf(piece, board)) },
      { name: "overlap", value: length(SEAM_OVERLAP_M.value) },
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
    inputs: pieceInputs((piece, _, { board }) => [
      {
        name: piece.cloth,
        value: arealMass(listCloths(board.materials)[piece.cloth]?.arealMassKgM2.value ?? 0),
      },
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

function rollWidthOf({ cloth }: PiecePlan, { shop, materials }: LayupContext["board"]): number {
  return shop?.rolls?.[cloth]?.widthM ?? listCloths(materials)[cloth]?.rollWidthM.value ?? 0;
}

function hangsOver({ cutting }: LayupPlan): number {
  return cutting === "rolled" ? OVERHANG_M.value : 0;
}

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

function pieceInputs(
  list: (piece: PiecePlan, layup: LayupPlan, context: LayupContext) => readonly WorkingInput[],
) {
  return fromLayup((layup, [id], context) => byId(layup.pieces, id, (piece) => list(piece, layup, context)));
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
