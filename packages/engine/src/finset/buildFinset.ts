import { say } from "../foundation/phrase";
import { type Finding, finding, type Stage } from "../foundation/stage";
import type { BoardShape } from "../shape/BoardShape";
import { type AlongBy, buildAlongBy } from "./alongTail";
import { buildAsSet } from "./buildAsSet";
import { buildLeashPlug } from "./buildLeashPlug";
import { buildMark } from "./buildMark";
import { buildPairs } from "./buildPairs";
import { checkClearances } from "./checkClearances";
import { checkFins, type StatedFins } from "./checkFins";
import { checkSpot } from "./checkSpot";
import { checkTurn } from "./checkTurn";
import { checkTwist } from "./checkTwist";
import { compareSides } from "./compareSides";
import { buildGround, computeClearances } from "./computeClearances";
import type { FilledFins } from "./FilledFins";
import type { FinsetPlan, SetOutLinePlan } from "./FinsetPlan";
import type { FinsInput } from "./FinsInput";
import { foldSides } from "./foldSides";
import { placeFins } from "./placeFins";
import { checkRule, recommendSides } from "./recommendSides";
import { buildSetOutLine, type SetOutLine } from "./SetOutLine";
import { takeFinDefaults } from "./takeFinDefaults";
import { buildVerify } from "./verify/buildVerify";
import { cleanReadings } from "./verify/cleanReadings";
import { tellVerify } from "./verify/tellVerify";
import type { VerifyRequest } from "./verify/VerifyRequest";

/**
 * Gives the fins as they are to be marked, checked and cut, from where the builder wants them and the board as surveyed.
 *
 * Plane trigonometry on the bottom seen square from above: each mark stands on its distance from the tail and its
 * distance from the rail; the base is turned in by its toe, however that was stated. All distances in metres and angles in
 * radians, in the contract's frame.
 * @param fins the `fins` part of the board file, or undefined where there is none
 * @param shape the surveyed board, or null where it could not be built
 * @returns the plan's `finset`; null, with a note, where no fins are asked for, and null, with a blocker, where no fin could be
 *   placed. A fin that cannot stand where it was put is left out of the marks, and a blocker says why
 */
export function buildFinset(fins: FinsInput | undefined, shape: BoardShape | null): Stage<FinsetPlan> {
  if (fins === undefined) {
    const says = say`add a fins part to the board file to get marks, boxes and the checks before the router`;
    return { value: null, findings: [finding("note", "finset.none", "fins", says)], assumptions: [] };
  }
  if (shape === null) {
    const says = say`fins are set out from the outline, and there is no outline yet`;
    return {
      value: null,
      findings: [finding("blocker", "finset.no-shape", "survey", says)],
      assumptions: [],
    };
  }
  const { fins: filled, findings, assumptions } = takeFinDefaults(fins);
  const laid = layOut({ given: fins, filled }, shape);
  if (laid.marks.length === 0)
    return { value: null, findings: orNoFin([...findings, ...laid.findings]), assumptions };
  const checked = checkLaidOut(filled, laid);
  const blocked = [...laid.findings, ...checked.findings].some(({ severity }) => severity === "blocker");
  const { sides, boxes, toleranceM } = filled;
  const gate = buildGate(filled, {
    ...laid,
    ...checked.parts,
    boxes,
    toleranceM,
    shape,
    isBlocked: blocked,
  });
  return {
    value: {
      asymmetryM: Math.max(0, ...laid.placed.ownRails.map(({ leftM, rightM }) => Math.abs(leftM - rightM))),
      sides,
      boxes,
      toleranceM,
      marks: laid.marks,
      ...checked.parts,
      verify: gate.value,
    },
    findings: [...findings, ...laid.findings, ...checked.findings, ...gate.findings],
    assumptions,
  };
}

/** Where every fin stands, and what could not stand. */
function layOut(fins: StatedFins, shape: BoardShape) {
  const { sides } = fins.filled;
  const along = buildAlongBy(fins.filled, shape);
  const line = buildSetOutLine(shape, sides);
  const checked = checkFins(fins);
  const request = { fins: checked.fins, sides, line, along };
  const placed = placeFins(request);
  const faults = placed.spots.map((spot) => ({ spot, check: (who: string) => checkSpot(line, spot, who) }));
  const faulty = faults.filter(({ spot, check }) => check(spot.id).length > 0);
  // Both sides of a faulty fin, so that what is true of one side only is said of that side.
  const told = faults.filter(({ spot }) => faulty.some((fault) => fault.spot.fin === spot.fin));
  const turned = placed.spots.map((spot) => ({ spot, check: (who: string) => checkTurn(spot, who) }));
  const built = placed.spots.flatMap((spot) => {
    if (faulty.some((fault) => fault.spot === spot)) return [];
    const ground = buildGround(line, spot);
    const mark = buildMark(along, ground);
    return mark === null ? [] : [{ ground, mark }];
  });
  return {
    along,
    line,
    request,
    placed,
    grounds: built.map(({ ground }) => ground),
    marks: built.map(({ mark }) => mark),
    findings: [...checked.findings, ...placed.findings, ...foldSides(told), ...foldSides(turned)],
  };
}

/** The room around the fins, the three rules beside each other, the plug, and the fins as set. */
function checkLaidOut(fins: FilledFins, laid: ReturnType<typeof layOut>) {
  const { sides, toleranceM } = fins;
  const { line, along, grounds, marks } = laid;
  const { shape } = line;
  const clearances = computeClearances(grounds);
  const plug = fins.leashPlug && buildLeashPlug({ plug: fins.leashPlug, line, along, grounds });
  const sidesCompared = compareSides(shape, laid.request, laid.placed);
  const recommended = recommendSides(sidesCompared, shape.plan.symmetry, toleranceM);
  const { asSet, asSetPairs, findings } = buildAsSet({ shape, along, toleranceM }, fins.asSet ?? [], marks);
  return {
    parts: {
      line: describeLine(line, along),
      pairs: buildPairs(shape, along, marks, laid.placed.ownRails),
      sidesCompared,
      recommendedSides: recommended.sides,
      clearances,
      leashPlug: plug?.value ?? null,
      asSet,
      asSetPairs,
    },
    findings: [
      ...checkClearances(grounds, marks, clearances),
      ...checkTwist(marks),
      ...(plug?.findings ?? []),
      ...checkRule({ sides, toleranceM }, recommended, laid.placed.ownRails),
      ...findings,
    ],
  };
}

/** The stop before the router. Nothing is said of it before something was read or confirmed. */
function buildGate(fins: FilledFins, laid: Omit<VerifyRequest, "measured" | "read">) {
  const clean = cleanReadings(fins.verify ?? {}, laid);
  const { value, checks } = buildVerify({ ...laid, measured: fins.asSet ?? [], read: clean.read });
  const told = { plan: value, checks, input: clean.read, boxes: laid.boxes };
  return { value, findings: fins.verify === undefined ? [] : [...clean.findings, ...tellVerify(told)] };
}

function orNoFin(findings: readonly Finding[]): readonly Finding[] {
  if (findings.some(({ severity }) => severity === "blocker")) return findings;
  return [...findings, finding("blocker", "finset.fin-missing", "fins.set", say`no fin is given`)];
}

function describeLine(line: SetOutLine, along: AlongBy): SetOutLinePlan {
  return {
    atTailM: line.atTailM,
    atNoseM: line.atTailM + line.noseUM * Math.sin(line.skewRad),
    skewRad: line.skewRad,
    noseFromTailM: line.noseUM,
    crotchFromTailM: along.crotchM,
    fromTailBy: along.by,
    fromTailOf: along.of,
  };
}
