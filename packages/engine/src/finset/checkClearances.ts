import { FIN_CLEARANCES } from "../constants/finClearances";
import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity } from "../foundation/stage";
import type { Ground } from "./computeClearances";
import type { ClearancePlan } from "./FinsetPlan";

type Make = (severity: Severity, code: string, field: string, says: Phrase) => void;

/** Finds where a box or a base has too little room, with the figure and the change that would cure it. */
export function checkClearances(
  grounds: readonly Ground[],
  clearances: readonly ClearancePlan[],
): readonly Finding[] {
  const findings: Finding[] = [];
  const told = new Set<string>();
  clearances.forEach((clearance, i) => {
    const ground = grounds[i]!;
    const make: Make = (severity, code, field, says) =>
      findings.push(finding(severity, code, `${ground.spot.path}.${field}`, says));
    if (ground.spot.fin.box !== undefined) checkBox(ground, clearance, make);
    checkNext(clearance, told, make);
    checkBow(clearance, make);
  });
  return findings;
}

function checkBox({ spot }: Ground, clearance: ClearancePlan, make: Make): void {
  if (clearance.toRailM < 0 || clearance.foamAboveM === null) {
    make(
      "blocker",
      "finset.box-outside",
      "box",
      say`the ${spot.id} fin's box reaches over the edge of the board: move the fin in or up the board, or use a shorter box`,
    );
    return;
  }
  checkAbove(spot.id, spot.fin.box!.depthM, clearance.foamAboveM, make);
  checkBeside(clearance, make);
}

function checkAbove(id: string, depthM: number, foamAboveM: number, make: Make): void {
  const leastM = FIN_CLEARANCES.foamAboveM;
  if (foamAboveM <= 0)
    make(
      "blocker",
      "finset.box-too-deep",
      "box.depth",
      say`the ${id} fin's box is ${length(depthM)} deep and would come out of the deck by ${length(-foamAboveM)}: use a box at most ${length(Math.max(0, depthM + foamAboveM - leastM))} deep, or a place where the board is thicker`,
    );
  else if (foamAboveM < leastM)
    make(
      "warning",
      "finset.foam-above",
      "box.depth",
      say`only ${length(foamAboveM)} of foam is left over the ${id} fin's box, where ${length(leastM)} is common practice: a box ${length(leastM - foamAboveM, "fine")} shallower, or a move up the board, would leave it`,
    );
}

function checkBeside({ id, foamBesideM, toRailM, toStringerM }: ClearancePlan, make: Make): void {
  const least = FIN_CLEARANCES;
  if (foamBesideM !== null && foamBesideM < least.foamBesideM)
    make(
      "warning",
      "finset.foam-beside",
      "fromRail",
      say`only ${length(foamBesideM)} of foam is left beside the ${id} fin's box at its floor, where ${length(least.foamBesideM)} is common practice: ${length(least.foamBesideM - foamBesideM, "fine")} farther from the rail would leave it`,
    );
  if (toRailM < least.toRailM)
    make(
      "warning",
      "finset.box-to-rail",
      "fromRail",
      say`the ${id} fin's box comes within ${length(toRailM)} of the rail, where ${length(least.toRailM)} is common practice: move the fin ${length(least.toRailM - toRailM, "fine")} in`,
    );
  if (toStringerM !== null && toStringerM < least.toStringerM)
    make(
      "warning",
      "finset.box-to-stringer",
      "fromRail",
      say`the ${id} fin's box comes within ${length(toStringerM)} of the middle of the stringer: move the fin out, or rout the stringer on purpose`,
    );
}

/** Two that are in one place are told once. */
function checkNext({ id, next, toNextM }: ClearancePlan, told: Set<string>, make: Make): void {
  if (next === null || toNextM === null || told.has(`${next} ${id}`)) return;
  told.add(`${id} ${next}`);
  if (toNextM <= 0)
    make(
      "blocker",
      "finset.boxes-overlap",
      "fromTail",
      say`the ${id} and ${next} fins are in one place: move one of them along the board`,
    );
  else if (toNextM < FIN_CLEARANCES.betweenBoxesM)
    make(
      "warning",
      "finset.box-to-box",
      "fromTail",
      say`only ${length(toNextM)} is left between the ${id} and ${next} fins, where ${length(FIN_CLEARANCES.betweenBoxesM)} is common practice: move one of them ${length(FIN_CLEARANCES.betweenBoxesM - toNextM, "fine")} along the board`,
    );
}

function checkBow({ id, bowUnderBaseM }: ClearancePlan, make: Make): void {
  if (Math.abs(bowUnderBaseM) <= FIN_CLEARANCES.bowUnderBaseM) return;
  const kind = bowUnderBaseM > 0 ? "hollow" : "rounded";
  make(
    "note",
    "finset.base-not-flat",
    "base",
    say`the bottom is ${kind} by ${length(Math.abs(bowUnderBaseM), "fine")} under the ${id} fin's base: set the box by its ends and sand it in, or scribe the base`,
  );
}
