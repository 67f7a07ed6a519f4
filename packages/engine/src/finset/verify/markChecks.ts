import { SET_OUT_TOLERANCE } from "../../constants/finClearances";
import type { AsSetPairPlan, AsSetPlan } from "../AsSetPlan";
import { computeStatedM } from "../alongTail";
import type { FinMark } from "../FinMark";
import type { AsSetInput } from "../FinsInput";
import { buildReading, type CheckOf, type VerifyCheck } from "./VerifyCheck";
import type { AngleReadingPlan, LengthReadingPlan } from "./VerifyPlan";
import { buildAngle, buildLength } from "./VerifyReading";
import type { VerifyRequest } from "./VerifyRequest";

/** Both marks of each fin as measured, from `fins.asSet`; what is out is told with the fins as set. */
export function buildMarkChecks(request: VerifyRequest): readonly VerifyCheck[] {
  return request.marks.map((mark) => {
    const asSet = request.asSet.find(({ id }) => id === mark.id);
    const what: CheckOf = {
      id: `marks-${mark.id}`,
      matter: "marks",
      how: "Measure both marks from the tail and from the centreline, and enter them as set.",
      fin: mark.fin,
      side: mark.side,
    };
    return buildReading(what, {
      lengths: [...listReadings(request, mark, asSet), ...judgeEnds(request.toleranceM, asSet)],
      angles: listAngles(mark, asSet),
      cure: () => ({ correction: asSet === undefined ? null : correct(asSet), says: null }),
    });
  });
}

/** The two sides of each pair as measured, against each other. */
export function buildSidesChecks({ pairs, asSetPairs, toleranceM }: VerifyRequest): readonly VerifyCheck[] {
  return pairs.map(({ id: fin }) => {
    const pair = asSetPairs.find(({ id }) => id === fin);
    const differ = (id: string, key: "trailingDifferM" | "leadingDifferM" | "alongDifferM") =>
      buildLength({ id, targetM: 0, toleranceM, readM: pair?.[key] ?? undefined });
    const what: CheckOf = {
      id: `sides-${fin}`,
      matter: "sides",
      how: "Hold the two sides as measured against each other: left less right of what each is out.",
      fin,
    };
    return buildReading(what, {
      lengths: [
        differ("trailing", "trailingDifferM"),
        differ("leading", "leadingDifferM"),
        ...(hasAlong(pair) ? [differ("along", "alongDifferM")] : []),
      ],
      cure: () => ({ correction: null, says: null }),
    });
  });
}

const hasAlong = (pair: AsSetPairPlan | undefined) => pair !== undefined && pair.alongDifferM !== null;

const ENDS = ["trailing", "leading"] as const;

/** The distances as a tape reads them: shown, and not judged one by one. */
function listReadings(
  { shape, along, measured }: VerifyRequest,
  mark: FinMark,
  asSet: AsSetPlan | undefined,
): readonly LengthReadingPlan[] {
  const read: AsSetInput | undefined =
    asSet === undefined ? undefined : measured.find((entry) => isOf(entry, mark));
  return ENDS.flatMap((end) => [
    buildLength({
      id: `${end}-from-tail`,
      targetM: computeStatedM(shape, along, mark[end].fromTailM),
      toleranceM: null,
      readM: read?.[end]?.fromTailM,
    }),
    buildLength({
      id: `${end}-from-centreline`,
      targetM: mark[end].fromCentrelineM,
      toleranceM: null,
      readM: read?.[end]?.fromCentrelineM,
    }),
  ]);
}

const isOf = ({ fin, side }: AsSetInput, mark: FinMark) =>
  fin === mark.fin && (mark.side === "centre" || side === mark.side);

/** How far each end is from where it belongs, in whatever direction. */
function judgeEnds(toleranceM: number, asSet: AsSetPlan | undefined): readonly LengthReadingPlan[] {
  return ENDS.map((end) =>
    buildLength({ id: end, targetM: 0, toleranceM, readM: asSet?.[`${end}ErrorM`] ?? undefined }),
  );
}

function listAngles({ cantRad }: FinMark, asSet: AsSetPlan | undefined): readonly AngleReadingPlan[] {
  const errorRad = asSet?.cantErrorRad ?? null;
  if (errorRad === null) return [];
  const { cantRad: toleranceRad } = SET_OUT_TOLERANCE;
  return [buildAngle({ id: "cant", targetRad: cantRad, toleranceRad, readRad: cantRad + errorRad })];
}

function correct({ correction }: AsSetPlan) {
  const { end, alongM, trailingAcrossM, leadingAcrossM, cantRad } = correction;
  return {
    end: end === "unknown" ? ("none" as const) : end,
    alongM,
    trailingAcrossM,
    leadingAcrossM,
    cantRad,
  };
}
