import { listPhrases } from "../foundation/listPhrases";
import { type Phrase, say } from "../foundation/phrase";
import { angle, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { AsSetPairPlan, AsSetPlan } from "./AsSetPlan";
import { type AsSetRequest, compareAsSet, compareAsSetPair } from "./compareAsSet";
import type { FinMark } from "./FinMark";
import type { AsSetInput } from "./FinsInput";

export interface AsSetResult {
  readonly asSet: readonly AsSetPlan[];
  readonly asSetPairs: readonly AsSetPairPlan[];
  readonly findings: readonly Finding[];
}

/** Gives the verdict on every fin that was measured as set, the sides against each other, and what to move. */
export function buildAsSet(
  request: AsSetRequest,
  measured: readonly AsSetInput[],
  marks: readonly FinMark[],
): AsSetResult {
  const findings: Finding[] = [];
  const asSet: AsSetPlan[] = [];
  measured.forEach((read, i) => {
    const path = `fins.asSet[${i}]`;
    if (!isNumeric(read)) {
      findings.push(
        finding(
          "warning",
          "finset.as-set-bad",
          path,
          say`a reading of the ${read.fin} fin as set is no number, so it is left aside`,
        ),
      );
      return;
    }
    const mark = marks.find(({ fin, side }) => fin === read.fin && (side === "centre" || side === read.side));
    if (mark === undefined) {
      findings.push(noSuchMark(read, path, marks));
      return;
    }
    if (asSet.some(({ id }) => id === mark.id)) {
      findings.push(
        finding(
          "warning",
          "finset.as-set-twice",
          path,
          say`the ${mark.id} fin as set is given twice: the first is used`,
        ),
      );
      return;
    }
    const plan = compareAsSet(request, read, mark);
    asSet.push(plan);
    findings.push(judge(plan, path, request.toleranceM));
  });
  const asSetPairs = pairUp(request.toleranceM, asSet, marks);
  return {
    asSet,
    asSetPairs,
    findings: [...findings, ...asSetPairs.flatMap((pair) => judgePair(pair, asSet, request.toleranceM))],
  };
}

function isNumeric({ trailing, leading, cantRad }: AsSetInput): boolean {
  const values = [
    trailing?.fromTailM,
    trailing?.fromCentrelineM,
    leading?.fromTailM,
    leading?.fromCentrelineM,
    cantRad,
  ];
  return values.every((value) => value === undefined || Number.isFinite(value));
}

function noSuchMark(read: AsSetInput, path: string, marks: readonly FinMark[]): Finding {
  const isPair = marks.some(({ fin }) => fin === read.fin);
  const says = isPair
    ? say`which ${read.fin} fin was measured is not said: add "side": "left" or "right", as the surfer stands`
    : say`there is no mark for a fin named "${read.fin}" to hold the measured one against`;
  return finding("warning", "finset.as-set-unknown", path, says);
}

function judge(plan: AsSetPlan, path: string, toleranceM: number): Finding {
  if (plan.correction.end === "unknown")
    return finding(
      "warning",
      "finset.as-set-incomplete",
      path,
      say`the ${plan.id} fin has no verdict yet: its ${plan.trailingErrorM === null ? "trailing" : "leading"} mark has not been measured`,
    );
  if (plan.withinTolerance)
    return finding(
      "note",
      "finset.as-set-good",
      path,
      say`the ${plan.id} fin is within ${length(toleranceM, "fine")}: trailing mark ${length(plan.trailingErrorM ?? 0, "fine")} out, leading mark ${length(plan.leadingErrorM ?? 0, "fine")} out`,
    );
  return finding("warning", "finset.as-set-out", path, say`the ${plan.id} fin is out: ${joinMoves(plan)}`);
}

function joinMoves({ correction, toeErrorRad }: AsSetPlan): Phrase {
  const moves: Phrase[] = [];
  const { alongM, trailingAcrossM, leadingAcrossM, cantRad } = correction;
  if (alongM !== 0)
    moves.push(
      say`move it ${length(Math.abs(alongM), "fine")} ${alongM > 0 ? "towards the nose" : "towards the tail"}`,
    );
  if (trailingAcrossM !== 0)
    moves.push(
      say`move its trailing end ${length(Math.abs(trailingAcrossM), "fine")} ${trailingAcrossM > 0 ? "outward" : "inward"}`,
    );
  if (leadingAcrossM !== 0)
    moves.push(
      say`move its leading end ${length(Math.abs(leadingAcrossM), "fine")} ${leadingAcrossM > 0 ? "outward" : "inward"}`,
    );
  if (cantRad !== 0)
    moves.push(say`lean it ${angle(Math.abs(cantRad))} ${cantRad > 0 ? "farther out" : "farther in"}`);
  const joined = listPhrases(moves, "semicolon");
  if (toeErrorRad === null) return joined;
  return say`${joined} (its toe is ${angle(Math.abs(toeErrorRad), "fine")} too ${toeErrorRad > 0 ? "much" : "little"})`;
}

function pairUp(
  toleranceM: number,
  asSet: readonly AsSetPlan[],
  marks: readonly FinMark[],
): readonly AsSetPairPlan[] {
  return marks.flatMap(({ fin, side }) => {
    const left = asSet.find(({ id }) => id === `${fin}-left`);
    const right = asSet.find(({ id }) => id === `${fin}-right`);
    if (side !== "left" || left === undefined || right === undefined) return [];
    return [compareAsSetPair(toleranceM, fin, left, right)];
  });
}

/** Speaks only where each side is good by itself and the two still differ. */
function judgePair(pair: AsSetPairPlan, asSet: readonly AsSetPlan[], toleranceM: number): readonly Finding[] {
  const sides = asSet.filter(({ id }) => id === `${pair.id}-left` || id === `${pair.id}-right`);
  if (pair.withinTolerance || !sides.every(({ withinTolerance }) => withinTolerance)) return [];
  const ends = sides.flatMap(({ id, trailingAcrossM, leadingAcrossM }) => [
    { id, end: "trailing", acrossM: trailingAcrossM ?? 0 },
    { id, end: "leading", acrossM: leadingAcrossM ?? 0 },
  ]);
  const worst = ends.reduce((a, b) => (Math.abs(b.acrossM) > Math.abs(a.acrossM) ? b : a));
  return [
    finding(
      "warning",
      "finset.as-set-sides",
      "fins.asSet",
      say`each ${pair.id} fin is within ${length(toleranceM, "fine")}, but the two sides differ by more: move the ${worst.end} end of the ${worst.id} fin ${length(Math.abs(worst.acrossM), "fine")} ${worst.acrossM > 0 ? "inward" : "outward"}`,
    ),
  ];
}
