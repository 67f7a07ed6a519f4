import { OVERHANG_M } from "../constants/clothCutting";
import type { Cloth } from "../constants/cloths";
import { SEAM_OVERLAP_M, WIDER_SLACK_M } from "../constants/rollCutting";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Stage } from "../foundation/stage";
import type { LayupPlan, PatternPlan, PiecePlan } from "../layup/LayupPlan";
import { namePiece } from "../layup/namePiece";
import type { RollsInput } from "../materials/RollsInput";
import type { PiecePart, RollPlan, SeamPlan } from "./CutPlan";
import { layOnRoll, type PieceToLay, type WayToLie } from "./layOnRoll";
import { cutPart, turnOutline } from "./outlineOnRoll";

/** Everything that is cut from the roll of one cloth; null with a blocker for each piece that cannot be. */
export function buildRoll(
  { id: cloth, rollWidthM }: Cloth,
  layup: LayupPlan,
  roll: RollsInput[string] | undefined,
): Stage<RollPlan> {
  const widthM = roll?.widthM ?? rollWidthM.value;
  const pieces = layup.pieces.filter((piece) => piece.cloth === cloth);
  const fitted = pieces.map((piece) => fitPiece(piece, layup, widthM));
  const findings = fitted.flatMap((each) => (each.finding === null ? [] : [each.finding]));
  if (fitted.some(({ strips }) => strips.length === 0)) return { value: null, findings, assumptions: [] };
  const laid = layOnRoll(
    fitted.flatMap(({ strips }) => strips),
    widthM,
  );
  const areaM2 = pieces.reduce(
    (sumM2, piece) => sumM2 + patternOf(piece, layup).areaM2 + piece.seamAreaM2,
    0,
  );
  const price = roll?.price ?? null;
  const value: RollPlan = {
    id: cloth,
    cloth,
    widthM,
    lengthM: laid.lengthM,
    usedRatio: areaM2 / (widthM * laid.lengthM),
    price,
    cost: price === null ? null : price * laid.lengthM,
    cuts: laid.cuts,
    placed: laid.placed,
    seams: fitted.flatMap(({ seam }) => (seam === null ? [] : [seam])),
  };
  return { value, findings, assumptions: [] };
}

interface FittedPiece {
  /** Empty where it fits in no way. */
  readonly strips: readonly PieceToLay[];
  readonly seam: SeamPlan | null;
  readonly finding: Finding | null;
}

/** In one piece, or in two strips along the stringer, or not at all. */
function fitPiece(piece: PiecePlan, layup: LayupPlan, rollWidthM: number): FittedPiece {
  const pattern = patternOf(piece, layup);
  const fits = (strip: PieceToLay) =>
    strip.ways.some(({ outline }) => outline.widthM <= rollWidthM + WIDER_SLACK_M.value);
  const whole = makeStrip(piece, pattern, "whole");
  if (fits(whole)) return { strips: [whole], seam: null, finding: null };
  const neededM = Math.min(...whole.ways.map(({ outline }) => outline.widthM));
  const halves = (["left", "right"] as const).map((part) => makeStrip(piece, pattern, part));
  if (piece.extent === null && halves.every(fits)) {
    const seam = {
      id: piece.id,
      fromStringerM: 0,
      overlapM: SEAM_OVERLAP_M.value,
      rollWidthM: neededM,
    };
    const says = say`${namePiece(piece.id)} is ${length(neededM)} wide and the roll of ${piece.cloth} ${length(rollWidthM)}: lay it in two strips that overlap by ${length(seam.overlapM)} on the stringer, or take a roll at least ${length(neededM)} wide`;
    return {
      strips: halves,
      seam,
      finding: finding("warning", "cutplan.seam", `cutplan.rolls[${piece.cloth}].seams[${piece.id}]`, says),
    };
  }
  const says = say`${namePiece(piece.id)} does not fit the roll of ${piece.cloth}, which is ${length(rollWidthM)} wide: it needs a roll at least ${length(neededM)} wide`;
  return {
    strips: [],
    seam: null,
    finding: finding("blocker", "cutplan.too-narrow", `shop.rolls[${piece.cloth}].width`, says),
  };
}

function makeStrip(piece: PiecePlan, pattern: PatternPlan, part: PiecePart): PieceToLay {
  const points = cutPart(pattern.points, part);
  const hangsM = piece.extent === null && piece.lengthM > pattern.lengthM ? OVERHANG_M.value : 0;
  return {
    id: part === "whole" ? piece.id : `${piece.id}-${part}`,
    piece: piece.id,
    part,
    pattern: pattern.id,
    ways: pattern.turnsRad.map(
      (turnRad): WayToLie => ({ turnRad, outline: turnOutline(points, turnRad), hangsM }),
    ),
  };
}

function patternOf(piece: PiecePlan, layup: LayupPlan): PatternPlan {
  const pattern = layup.patterns.find(({ id }) => id === piece.pattern);
  if (pattern === undefined) throw new Error(`${piece.id} has no flat shape: a fault of the program`);
  return pattern;
}
