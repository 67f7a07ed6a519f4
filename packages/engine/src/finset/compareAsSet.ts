import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import type { BoardShape } from "../shape/BoardShape";
import type { AsSetPairPlan, AsSetPlan, CorrectionPlan } from "./AsSetPlan";
import { type AlongBy, computeStraightM } from "./alongTail";
import type { FinMark, MarkPoint } from "./FinMark";
import type { AsSetInput } from "./FinsInput";

export interface AsSetRequest {
  readonly shape: BoardShape;
  readonly along: AlongBy;
  readonly toleranceM: number;
}

interface EndError {
  readonly alongM: number | null;
  readonly acrossM: number | null;
}

/**
 * Gives how far a fin as set is from where it belongs, and the smallest move that brings it back.
 *
 * An end's error is the length of its offset in plan, in whatever of the two directions was read. Toe is by both ends as
 * read, or over the stated base where a distance from the tail is missing.
 */
export function compareAsSet(request: AsSetRequest, measured: AsSetInput, mark: FinMark): AsSetPlan {
  const trailing = computeEnd(request, measured.trailing, mark.trailing);
  const leading = computeEnd(request, measured.leading, mark.leading);
  const trailingErrorM = computeSizeM(trailing);
  const leadingErrorM = computeSizeM(leading);
  const cantErrorRad = measured.cantRad === undefined ? null : measured.cantRad - mark.cantRad;
  const isWithin = (errorM: number | null) => errorM !== null && errorM <= request.toleranceM;
  const cantIsWithin = cantErrorRad === null || Math.abs(cantErrorRad) <= SET_OUT_TOLERANCE.cantRad;
  return {
    id: mark.id,
    on: measured.on ?? null,
    trailingErrorM,
    leadingErrorM,
    toeErrorRad: computeToeError(mark, trailing, leading),
    cantErrorRad,
    withinTolerance: isWithin(trailingErrorM) && isWithin(leadingErrorM) && cantIsWithin,
    trailingAlongM: trailing.alongM,
    trailingAcrossM: trailing.acrossM,
    leadingAlongM: leading.alongM,
    leadingAcrossM: leading.acrossM,
    correction: computeCorrection(request.toleranceM, {
      trailing,
      leading,
      cantRad: cantIsWithin ? 0 : -cantErrorRad,
    }),
  };
}

function computeEnd(
  { shape, along }: AsSetRequest,
  read: AsSetInput["trailing"],
  planned: MarkPoint,
): EndError {
  const straightM = read?.fromTailM === undefined ? null : computeStraightM(shape, along, read.fromTailM);
  return {
    alongM: straightM === null ? null : straightM - planned.fromTailM,
    acrossM: read?.fromCentrelineM === undefined ? null : read.fromCentrelineM - planned.fromCentrelineM,
  };
}

function computeSizeM({ alongM, acrossM }: EndError): number | null {
  return alongM === null && acrossM === null ? null : Math.hypot(alongM ?? 0, acrossM ?? 0);
}

function computeToeError(mark: FinMark, trailing: EndError, leading: EndError): number | null {
  if (trailing.acrossM === null || leading.acrossM === null) return null;
  const inM = mark.toeOverBaseM + trailing.acrossM - leading.acrossM;
  if (trailing.alongM !== null && leading.alongM !== null) {
    const alongM = mark.baseM * Math.cos(mark.toeRad) + leading.alongM - trailing.alongM;
    return Math.atan2(inM, alongM) - mark.toeRad;
  }
  return Math.abs(inM) < mark.baseM ? Math.asin(inM / mark.baseM) - mark.toeRad : null;
}

interface Errors {
  readonly trailing: EndError;
  readonly leading: EndError;
  readonly cantRad: number;
}

/** A slide along is taken off first; then each end that is still out moves across, and one that is not stays. */
function computeCorrection(toleranceM: number, { trailing, leading, cantRad }: Errors): CorrectionPlan {
  const alongs = [trailing.alongM, leading.alongM].filter((alongM) => alongM !== null);
  const meanM = alongs.length === 0 ? 0 : alongs.reduce((sum, alongM) => sum + alongM, 0) / alongs.length;
  const slideM = Math.abs(meanM) > toleranceM ? -meanM : 0;
  const acrossM = (end: EndError) => {
    const leftM = end.alongM === null ? 0 : end.alongM + slideM;
    return Math.hypot(leftM, end.acrossM ?? 0) > toleranceM ? nought(-(end.acrossM ?? 0)) : 0;
  };
  const [trailingAcrossM, leadingAcrossM] = [acrossM(trailing), acrossM(leading)];
  const isKnown = computeSizeM(trailing) !== null && computeSizeM(leading) !== null;
  const end = isKnown ? whichEnd(trailingAcrossM !== 0, leadingAcrossM !== 0, slideM !== 0) : "unknown";
  return { end, alongM: slideM, trailingAcrossM, leadingAcrossM, cantRad };
}

/** Nought without a sign. */
const nought = (value: number) => (value === 0 ? 0 : value);

function whichEnd(trailing: boolean, leading: boolean, slide: boolean): CorrectionPlan["end"] {
  if (slide || (trailing && leading)) return "both";
  if (trailing) return "trailing";
  return leading ? "leading" : "none";
}

/** Gives how the two sides of a pair as set differ from each other. */
export function compareAsSetPair(
  toleranceM: number,
  fin: string,
  left: AsSetPlan,
  right: AsSetPlan,
): AsSetPairPlan {
  const differ = (key: "trailingAcrossM" | "leadingAcrossM" | "trailingAlongM" | "toeErrorRad") => {
    const [l, r] = [left[key], right[key]];
    return l === null || r === null ? null : l - r;
  };
  const trailingDifferM = differ("trailingAcrossM");
  const leadingDifferM = differ("leadingAcrossM");
  const alongDifferM = differ("trailingAlongM");
  const isWithin = (differM: number | null) => differM !== null && Math.abs(differM) <= toleranceM;
  return {
    id: fin,
    trailingDifferM,
    leadingDifferM,
    alongDifferM,
    toeDifferRad: differ("toeErrorRad"),
    withinTolerance:
      isWithin(trailingDifferM) &&
      isWithin(leadingDifferM) &&
      (alongDifferM === null || isWithin(alongDifferM)),
  };
}
