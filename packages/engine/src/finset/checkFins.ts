import { SET_OUT_TOLERANCE } from "../constants/finClearances";
import { MOST_CANT, USUAL_CANT, USUAL_TOLERANCE } from "../constants/finLimits";
import { type Phrase, say } from "../foundation/phrase";
import { angle, length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { FilledFins } from "./FilledFins";
import type { FinInput, FinsInput } from "./FinsInput";
import type { ListedFin } from "./placeFins";
import { isRole, REQUIRED_FINS } from "./requiredFins";

export interface CheckedFins {
  /** The fins that can be placed. */
  readonly fins: readonly ListedFin[];
  readonly findings: readonly Finding[];
}

/** As they are in the board file, and with what it leaves out. */
export interface StatedFins {
  readonly given: FinsInput;
  readonly filled: FilledFins;
}

/** Finds what is wrong with the fins as they are stated, before any of them is placed. */
export function checkFins({ given, filled }: StatedFins): CheckedFins {
  const listed = filled.set.map((fin, i) => ({ fin, path: `fins.set[${i}]` }));
  const findings = [...checkNames(given, listed), ...checkTolerance(given)];
  const fins = listed.filter(({ fin, path }, i) => {
    // What was filled in hangs on what was given, and only that can be wrong.
    const wrong = checkFin(given.set[i] ?? fin, path);
    findings.push(...wrong);
    const isFirst = listed.findIndex((other) => other.fin.fin === fin.fin) === i;
    return isFirst && !wrong.some(({ severity }) => severity === "blocker");
  });
  return { fins, findings };
}

function checkTolerance({ toleranceM }: FinsInput): readonly Finding[] {
  if (toleranceM === undefined) return [];
  if (Number.isFinite(toleranceM) && toleranceM > 0) return checkLoose(toleranceM);
  const says = say`the tolerance of the set-out has to be more than nought; 1 mm is common practice`;
  return [finding("blocker", "finset.bad-length", "fins.tolerance", says)];
}

function checkLoose(toleranceM: number): readonly Finding[] {
  if (toleranceM <= USUAL_TOLERANCE.mostM) return [];
  const says = say`the set-out is held to ${length(toleranceM, "fine")}: common practice is ${length(SET_OUT_TOLERANCE.markM)}, and past ${length(USUAL_TOLERANCE.mostM)} the checks let through what can be felt`;
  return [finding("warning", "finset.tolerance-loose", "fins.tolerance", says)];
}

function checkNames(input: FinsInput, listed: readonly ListedFin[]): readonly Finding[] {
  const required = REQUIRED_FINS[input.arrangement];
  const names = listed.map(({ fin }) => fin.fin);
  const missing = required.filter((role) => !names.includes(role));
  const findings = missing.map((role) =>
    finding(
      "blocker",
      "finset.fin-missing",
      "fins.set",
      say`a ${input.arrangement} has a ${role} fin, and none is given`,
    ),
  );
  listed.forEach(({ fin, path }, i) => {
    const says = (words: Phrase, code: string, severity: "blocker" | "warning") =>
      findings.push(finding(severity, code, `${path}.fin`, words));
    if (names.indexOf(fin.fin) < i)
      says(
        say`the ${fin.fin} fin is given twice: one line of the set stands for both sides`,
        "finset.fin-twice",
        "blocker",
      );
    else if (isRole(fin.fin) && !required.includes(fin.fin))
      says(
        say`a ${input.arrangement} has no ${fin.fin} fin: it is set out all the same, so see that it is meant`,
        "finset.fin-extra",
        "warning",
      );
  });
  return findings;
}

function checkFin(fin: FinInput, path: string): readonly Finding[] {
  const bad = (field: string, code: string, words: Phrase) =>
    finding("blocker", code, `${path}.${field}`, words);
  const findings: Finding[] = [];
  for (const { field, value, least } of lengths(fin)) {
    if (value === undefined || (Number.isFinite(value) && IS_RIGHT[least](value))) continue;
    const read = Number.isFinite(value) ? say`${length(value)}` : say`no number`;
    const words = say`the ${fin.fin} fin's ${field} reads ${read}: it has to be ${RIGHT[least]}`;
    findings.push(bad(field, "finset.bad-length", words));
  }
  if (isRole(fin.fin) && fin.fin !== "centre" && fin.fromRailM === undefined)
    findings.push(
      bad("fromRail", "finset.no-from-rail", say`the ${fin.fin} fins need their distance from the rail`),
    );
  if (fin.fin === "centre" && fin.fromRailM !== undefined)
    findings.push(
      bad(
        "fromRail",
        "finset.centre-from-rail",
        say`a centre fin stands on the centreline and takes no distance from the rail: leave it out, or give the fin another name`,
      ),
    );
  return [...findings, ...checkCant(fin, path), ...checkToe(fin, path)];
}

const IS_RIGHT = {
  above: (value: number) => value > 0,
  nought: (value: number) => value >= 0,
  any: () => true,
} as const;
const RIGHT = { above: "more than nought", nought: "nought or more", any: "a length" } as const;

function lengths(fin: FinInput) {
  return [
    { field: "fromTail", value: fin.fromTailM, least: "nought" },
    { field: "fromRail", value: fin.fromRailM, least: "nought" },
    { field: "base", value: fin.baseM, least: "above" },
    { field: "depth", value: fin.depthM, least: "above" },
    { field: "box.length", value: fin.box?.lengthM, least: "above" },
    { field: "box.width", value: fin.box?.widthM, least: "above" },
    { field: "box.depth", value: fin.box?.depthM, least: "above" },
    { field: "box.behindTrailing", value: fin.box?.behindTrailingM, least: "any" },
  ] as const;
}

function checkCant(fin: FinInput, path: string): readonly Finding[] {
  const cantRad = fin.cantRad;
  if (cantRad === undefined) return [];
  if (!Number.isFinite(cantRad) || Math.abs(cantRad) > MOST_CANT.rad) {
    const read = Number.isFinite(cantRad) ? say`${angle(cantRad)}` : say`no number`;
    const says = say`the ${fin.fin} fin's cant reads ${read}: a fin leans a few degrees outwards, and one past ${angle(MOST_CANT.rad)} is taken for a slip of the pen`;
    return [finding("blocker", "finset.cant-absurd", `${path}.cant`, says)];
  }
  if (fin.fromRailM === undefined) return checkCentreCant(fin, cantRad, path);
  if (cantRad >= USUAL_CANT.lowRad && cantRad <= USUAL_CANT.highRad) return [];
  return [
    finding(
      "warning",
      "finset.cant-unusual",
      `${path}.cant`,
      cantRad < 0
        ? say`the ${fin.fin} fins are to lean ${angle(-cantRad)} inwards; common practice is ${angle(USUAL_CANT.lowRad)} to ${angle(USUAL_CANT.highRad)} outwards`
        : say`the ${fin.fin} fins are to lean ${angle(cantRad)} outwards; common practice is ${angle(USUAL_CANT.lowRad)} to ${angle(USUAL_CANT.highRad)}`,
    ),
  ];
}

/** A fin on the centreline stands square: any lean turns the board. */
function checkCentreCant({ fin }: FinInput, cantRad: number, path: string): readonly Finding[] {
  if (cantRad === 0) return [];
  const says = say`the ${fin} fin stands on the centreline and is to lean ${angle(Math.abs(cantRad))} to the ${cantRad > 0 ? "left" : "right"}: common practice is none, since one that leans pulls the board to one side`;
  return [finding("warning", "finset.cant-unusual", `${path}.cant`, says)];
}

/** A toe on the centreline would turn the board; a number that is none would turn into one that is. */
function checkToe(fin: FinInput, path: string): readonly Finding[] {
  const toe = fin.toe;
  if (toe === undefined) return [];
  const values = Object.values(toe).filter((value) => typeof value === "number");
  if (values.some((value) => !Number.isFinite(value)))
    return [finding("blocker", "finset.bad-toe", `${path}.toe`, say`the ${fin.fin} fin's toe is no number`)];
  const isOnLine = fin.fromRailM === undefined;
  if (!isOnLine || toe.kind === "meets" || values.every((value) => value === 0)) return [];
  return [
    finding(
      "warning",
      "finset.centre-toe",
      `${path}.toe`,
      say`the ${fin.fin} fin stands on the centreline and is set along it; the toe given is left aside`,
    ),
  ];
}
