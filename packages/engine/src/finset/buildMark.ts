import { type AlongBy, computeFromCrotchM } from "./alongTail";
import { computeFoamUnderM } from "./boxFoam";
import { buildBox } from "./buildBox";
import { buildWorth, computeRoundings } from "./buildWorth";
import type { Ground } from "./computeClearances";
import { computeLeading } from "./computeLeading";
import type { FinMark, MarkPoint } from "./FinMark";
import { type FinSpot, spotSide } from "./FinSpot";
import { computeToRailM } from "./railDistance";
import { computeRailM, placeOnBoard, type SetOutLine } from "./SetOutLine";
import { computeToeForms } from "./ToeForms";

/**
 * Gives everything a builder needs to mark one fin: both ends of its base, its toe in every form, its lean and its box.
 *
 * The base is a straight length in plan from the trailing mark, turned in by the toe.
 * @returns null where an end of the base has no rail beside it, which the checks of the spot have said before
 */
export function buildMark(along: AlongBy, { spot, frame }: Ground): FinMark | null {
  const { line } = frame;
  const { fin, toeRad } = spot;
  const trailing = buildPoint(line, along, spot, { uM: spot.uM, vM: spot.vM });
  const leading = buildPoint(line, along, spot, computeLeading(spot));
  if (trailing === null || leading === null) return null;
  const base = { uM: spot.uM, vM: spot.vM, baseM: fin.baseM, noseUM: line.noseUM };
  return {
    id: spot.id,
    fin: fin.fin,
    side: spot.side,
    baseM: fin.baseM,
    ...computeToeForms(base, toeRad),
    cantRad: fin.cantRad,
    ...frame.trueCant,
    trailing,
    leading,
    worth: buildWorth(base, toeRad),
    rounding: computeRoundings(base, toeRad),
    foamUnderM: computeFoamUnderM(frame),
    box: buildBox(frame),
    depthM: fin.depthM ?? null,
    sweepRad: fin.sweepRad ?? null,
    foil: fin.foil === undefined ? null : { kind: fin.foil.kind, thicknessRatio: fin.foil.thickness ?? null },
  };
}

function buildPoint(
  line: SetOutLine,
  along: AlongBy,
  spot: FinSpot,
  { uM, vM }: { readonly uM: number; readonly vM: number },
): MarkPoint | null {
  const { shape } = line;
  const side = spotSide(spot);
  const railM = computeRailM(line, side, uM);
  if (railM === null || uM < 0 || uM > shape.lengthM) return null;
  const at = placeOnBoard(line, side, uM, vM);
  return {
    fromTailM: uM,
    fromTailTapeM: shape.tapeFromStraightM(uM),
    fromCrotchTapeM: computeFromCrotchM(shape, along, uM),
    fromCentrelineM: Math.abs(vM),
    fromStringerM: Math.abs(at.yM),
    fromRailM: railM - vM,
    toRailM: computeToRailM(shape, side, at),
    at,
  };
}
