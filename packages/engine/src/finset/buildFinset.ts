import { say } from "../foundation/phrase";
import { type Finding, finding, type Stage } from "../foundation/stage";
import type { BoardShape } from "../shape/BoardShape";
import { type AlongBy, buildAlongBy } from "./alongTail";
import { buildAsSet } from "./buildAsSet";
import { buildLeashPlug } from "./buildLeashPlug";
import { buildMark } from "./buildMark";
import { buildPairs } from "./buildPairs";
import { checkClearances } from "./checkClearances";
import { checkFins } from "./checkFins";
import { checkSpot } from "./checkSpot";
import { compareSides } from "./compareSides";
import { buildGround, computeClearances } from "./computeClearances";
import type { FinSpot } from "./FinSpot";
import type { FinsetPlan, SetOutLinePlan } from "./FinsetPlan";
import type { FinsInput } from "./FinsInput";
import { placeFins } from "./placeFins";
import { checkRule, recommendSides } from "./recommendSides";
import { buildSetOutLine, type SetOutLine } from "./SetOutLine";
import { takeFinDefaults } from "./takeFinDefaults";

/**
 * Gives the fins as they are to be marked, checked and cut, from where the builder wants them and the board as surveyed.
 *
 * Plane trigonometry on the bottom seen square from above: each mark stands on its distance from the tail and its
 * distance from the rail; the base is turned in by its toe, however that was stated. All distances in metres and angles in
 * radians, in the contract's frame.
 * @param fins the `fins` part of the board file, or undefined where there is none
 * @param shape the surveyed board, or null where it could not be built
 * @returns the plan's `finset`; null, with a blocker, where no fin could be placed. A fin that cannot stand where it was put is
 *   left out of the marks, and a blocker says why
 */
export function buildFinset(fins: FinsInput | undefined, shape: BoardShape | null): Stage<FinsetPlan> {
  if (fins === undefined)
    return nothing("finset.none", "fins", "the board file names no fins, so none can be set out");
  if (shape === null)
    return nothing(
      "finset.no-shape",
      "survey",
      "fins are set out from the outline, and there is no outline yet",
    );
  const defaults = takeFinDefaults(fins);
  const along = buildAlongBy(fins, shape);
  const line = buildSetOutLine(shape, defaults.sides);
  const checked = checkFins(fins);
  const placed = placeFins({ fins: checked.fins, sides: defaults.sides, line, along });
  const findings = [...checked.findings, ...placed.findings];
  const spots = keepOnBoard(line, placed.spots, findings);
  const marks = spots.flatMap((spot) => buildMark(line, along, spot) ?? []);
  if (marks.length === 0)
    return { value: null, findings: orNoFin(findings), assumptions: defaults.assumptions };
  const grounds = spots.map((spot) => buildGround(line, spot));
  const clearances = computeClearances(line, grounds);
  const plug = fins.leashPlug && buildLeashPlug({ plug: fins.leashPlug, line, along, grounds });
  const compared = compareSides(shape, { fins: checked.fins, along });
  const recommended = recommendSides(compared, shape.plan.symmetry);
  const asSet = buildAsSet({ shape, along, toleranceM: defaults.toleranceM }, fins.asSet ?? [], marks);
  findings.push(...checkClearances(grounds, clearances), ...(plug?.findings ?? []));
  findings.push(...checkRule(defaults.sides, recommended, placed.ownRails), ...asSet.findings);
  const value: FinsetPlan = {
    asymmetryM: Math.max(0, ...placed.ownRails.map(({ leftM, rightM }) => Math.abs(leftM - rightM))),
    sides: defaults.sides,
    boxes: defaults.boxes,
    toleranceM: defaults.toleranceM,
    line: describeLine(line, along),
    marks,
    pairs: buildPairs(shape, marks, placed.ownRails),
    sidesCompared: compared,
    recommendedSides: recommended.sides,
    clearances,
    leashPlug: plug?.value ?? null,
    asSet: asSet.asSet,
    asSetPairs: asSet.asSetPairs,
  };
  return { value, findings, assumptions: defaults.assumptions };
}

function nothing(code: string, path: string, words: string): Stage<FinsetPlan> {
  return { value: null, findings: [finding("blocker", code, path, [words])], assumptions: [] };
}

function orNoFin(findings: readonly Finding[]): readonly Finding[] {
  if (findings.some(({ severity }) => severity === "blocker")) return findings;
  return [...findings, finding("blocker", "finset.fin-missing", "fins.set", say`no fin is given`)];
}

/** A fault is told for each side, since a lopsided board can have it on one. */
function keepOnBoard(line: SetOutLine, spots: readonly FinSpot[], findings: Finding[]): readonly FinSpot[] {
  return spots.filter((spot) => {
    const fault = checkSpot(line, spot);
    if (fault !== null) findings.push(fault);
    return fault === null;
  });
}

function describeLine(line: SetOutLine, along: AlongBy): SetOutLinePlan {
  return {
    atTailM: line.atTailM,
    atNoseM: line.atTailM + line.noseUM * Math.sin(line.skewRad),
    skewRad: line.skewRad,
    noseFromTailM: line.noseUM,
    crotchFromTailM: along.crotchM,
  };
}
