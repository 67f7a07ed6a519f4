import {
  LAP_GATHER_SHARE,
  LEAST_FLAP_M,
  NOTCH_SHORT_M,
  PATTERN_TOLERANCE_M,
  WIDEST_NOTCH_M,
} from "../constants/clothCutting";
import { say } from "../foundation/phrase";
import { area, fraction, length } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { LayupPlan, PatternPlan } from "./LayupPlan";

const point = (words: string) => ({
  words,
  formula:
    "along: ∫ √(1 + z′²) dx of the face's centreline; across: the section's arc from the centreline to the widest line; then out by the lap, square to the edge",
  sources: ["geometry", PATTERN_TOLERANCE_M.source] as const,
  inputs: patternInputs((pattern, layup) => [
    ...listFace(pattern, layup),
    { name: "kept within", value: length(PATTERN_TOLERANCE_M.value, "fine") },
  ]),
});

const notch = (words: string, formula: string) => ({
  words,
  formula,
  sources: ["geometry", LAP_GATHER_SHARE.source] as const,
  inputs: patternInputs((pattern, layup) => [
    ...listFace(pattern, layup),
    { name: "a lap gathers without a fold", value: fraction(LAP_GATHER_SHARE.value) },
    { name: "widest notch in a curve", value: length(WIDEST_NOTCH_M.value) },
    { name: "least cloth between two", value: length(LEAST_FLAP_M.value) },
    { name: "short of the widest line", value: length(NOTCH_SHORT_M.value) },
  ]),
});

/** How the flat shapes of the pieces, and the notches in their laps, come about. */
export const patternsWorking: WorkingTable<LayupContext> = {
  "layup.patterns[].points[].alongM": point("a point of the flat piece, along the warp"),
  "layup.patterns[].points[].acrossM": point("a point of the flat piece, across the warp"),
  "layup.patterns[].lengthM": {
    words: "length of the flat piece along the warp",
    formula: "max along − min along",
    sources: ["geometry"],
    inputs: patternInputs(listFace),
  },
  "layup.patterns[].widthM": {
    words: "width of the flat piece across the warp",
    formula: "max across − min across",
    sources: ["geometry"],
    inputs: patternInputs(listFace),
  },
  "layup.patterns[].areaM2": {
    words:
      "area of the flat piece, notches not taken off; it differs from the surface it covers by what the cloth must shear on round rails and by the lap's corners",
    formula: "½ Σ (xᵢ yᵢ₊₁ − xᵢ₊₁ yᵢ)",
    sources: ["geometry"],
    inputs: patternInputs((pattern, layup) => [
      ...listFace(pattern, layup),
      ...layup.pieces
        .filter((piece) => piece.pattern === pattern.id)
        .map((piece) => ({ name: say`surface under ${piece.id}`, value: area(piece.areaM2) })),
    ]),
  },
  "layup.patterns[].edgeM": {
    words: "once round the flat piece: what is cut, or trimmed on the board",
    formula: "Σ √(Δalong² + Δacross²)",
    sources: ["geometry"],
    inputs: patternInputs(listFace),
  },
  "layup.patterns[].turnsRad[]": {
    words: "how the piece may be turned on the roll without its warp leaving its line",
    formula: "0 and 180°; for a patch of plain cloth without an angle of its own 90 and 270° too",
    sources: ["common-practice"],
    inputs: patternInputs(listFace),
  },
  "layup.patterns[].notches[].fromTailTapeM": notch(
    "where the notch meets the rail, along the bottom from the tail",
    "equal shares of the lap's edge round a stretch where 2 × lap × turn for each metre is more than cloth gathers",
  ),
  "layup.patterns[].notches[].alongM": notch("the notch's root, along the warp", "edge + short × normal"),
  "layup.patterns[].notches[].acrossM": notch("the notch's root, across the warp", "edge + short × normal"),
  "layup.patterns[].notches[].toAlongM": notch("the notch's mouth, along the warp", "edge + lap × normal"),
  "layup.patterns[].notches[].toAcrossM": notch("the notch's mouth, across the warp", "edge + lap × normal"),
  "layup.patterns[].notches[].openM": notch(
    "width of the wedge at its mouth",
    "2 × lap × turn ÷ number of notches, at most the widest in a curve; nought for a slit",
  ),
};

function patternInputs(list: (pattern: PatternPlan, layup: LayupPlan) => readonly WorkingInput[]) {
  return fromLayup((layup, [id]) => byId(layup.patterns, id, (pattern) => list(pattern, layup)));
}

function listFace(pattern: PatternPlan, layup: LayupPlan): readonly WorkingInput[] {
  const lapOf = layup.pieces.find((piece) => piece.pattern === pattern.id)?.extent === null;
  return byId(layup.faces, pattern.face, ({ arcM, girthMaxM, lapM }) => [
    { name: "face's arc", value: length(arcM) },
    { name: "face's widest girth", value: length(girthMaxM) },
    ...(lapOf ? [{ name: "widest lap of the face", value: length(lapM) }] : []),
  ]);
}
