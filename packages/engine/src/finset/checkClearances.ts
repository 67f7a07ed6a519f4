import { FIN_CLEARANCES } from "../constants/finClearances";
import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity } from "../foundation/stage";
import { placeBoxPoint } from "./BoxFrame";
import type { Ground } from "./computeClearances";
import type { FinMark } from "./FinMark";
import type { FinSpot } from "./FinSpot";
import type { ClearancePlan } from "./FinsetPlan";
import { foldSides } from "./foldSides";

type Make = (severity: Severity, code: string, field: string, says: Phrase) => void;

/** The room around a box, and the foam above it. */
type Room = ClearancePlan & Pick<FinMark, "foamUnderM">;

/**
 * Finds where a box or a base has too little room, with the figure and the change that would cure it.
 * @param marks the fins' marks, and
 * @param clearances their room, one for each of the grounds
 */
export function checkClearances(
  grounds: readonly Ground[],
  marks: readonly FinMark[],
  clearances: readonly ClearancePlan[],
): readonly Finding[] {
  const rooms = clearances.map(
    (clearance, i): Room => ({ ...clearance, foamUnderM: marks[i]?.foamUnderM ?? null }),
  );
  const tell = (check: (who: string, room: Room, ground: Ground, make: Make) => void) =>
    foldSides(
      rooms.map((clearance, i) => {
        const ground = grounds[i]!;
        return {
          spot: ground.spot,
          check: (who) => gather(ground, (make) => check(who, clearance, ground, make)),
        };
      }),
    );
  return [
    ...tell((who, clearance, ground, make) => {
      const { box } = ground.spot.fin;
      if (box !== undefined && isInNotch(ground)) tellNotch(who, make);
      else if (box !== undefined) checkBox(who, box.depthM, clearance, make);
      checkBow(who, clearance, make);
    }),
    ...tell((who, clearance, ground, make) => {
      const { spot } = ground;
      const next = grounds.find((other) => other.spot.id === clearance.next);
      if (next !== undefined && isFirstOfTwo(clearance, clearances))
        checkNext(nameBoth(who, spot, next.spot), cureOf(ground, next), clearance, make);
    }),
  ];
}

function gather({ spot }: Ground, check: (make: Make) => void): readonly Finding[] {
  const findings: Finding[] = [];
  check((severity, code, field, says) =>
    findings.push(finding(severity, code, `${spot.path}.${field}`, says)),
  );
  return findings;
}

/** Two that lie nearest to each other are told of once, at the first. */
function isFirstOfTwo({ id, next }: ClearancePlan, clearances: readonly ClearancePlan[]): boolean {
  const place = (name: string | null) => clearances.findIndex((clearance) => clearance.id === name);
  return clearances[place(next)]?.next !== id || place(id) < place(next);
}

/** Two of a pair are moved apart across the board, any others along it, by what they overlap and a stated gap more. */
function cureOf(
  { spot, footprint: a }: Ground,
  { spot: nextSpot, footprint: b }: Ground,
): (byM: number) => Phrase {
  const ends = (polygon: Ground["footprint"]) => polygon.map(({ xM }) => xM);
  const overlapM = Math.min(
    Math.max(...ends(a)) - Math.min(...ends(b)),
    Math.max(...ends(b)) - Math.min(...ends(a)),
  );
  return (byM) =>
    nextSpot.fin.fin === spot.fin.fin
      ? say`set both nearer to their rails`
      : say`move one of them ${length(Math.max(0, overlapM) + byM, "fine")} along the board`;
}

/** By their plain names where they stand on one side. */
function nameBoth(who: string, spot: FinSpot, next: FinSpot): Phrase {
  if (next.fin.fin === spot.fin.fin) return say`two ${spot.fin.fin}`;
  return say`${who} and ${next.side === spot.side ? next.fin.fin : next.id}`;
}

/** Whether a corner of what is cut lies where a swallow tail has no board. */
const isInNotch = ({ frame, footprint }: Ground): boolean =>
  [...footprint, placeBoxPoint(frame, { alongM: frame.rearM, outM: 0, inM: 0 })].some(
    ({ xM, yM }) => xM >= 0 && Math.abs(yM) < frame.line.shape.notchHalfWidthM(xM),
  );

function tellNotch(who: string, make: Make): void {
  make(
    "blocker",
    "finset.box-in-notch",
    "box",
    say`the ${who} fin's box reaches into the tail's notch: move the fin up past the crotch, or use a box that reaches less far behind its mark`,
  );
}

function checkBox(who: string, depthM: number, clearance: Room, make: Make): void {
  if (clearance.toRailM < 0 || clearance.foamUnderM === null) {
    make(
      "blocker",
      "finset.box-outside",
      "box",
      clearance.toRailM < 0
        ? say`the ${who} fin's box reaches ${length(-clearance.toRailM)} over the rail: move the fin ${length(FIN_CLEARANCES.toRailM - clearance.toRailM)} inward, or farther up the board`
        : say`the ${who} fin's box reaches over the end of the board: move the fin up the board, or use a box that reaches less far behind its mark`,
    );
    return;
  }
  checkAbove(who, depthM, clearance.foamUnderM, make);
  checkBeside(who, clearance, make);
}

function checkAbove(who: string, depthM: number, foamAboveM: number, make: Make): void {
  const leastM = FIN_CLEARANCES.foamAboveM;
  if (foamAboveM <= 0)
    make(
      "blocker",
      "finset.box-too-deep",
      "box.depth",
      say`the ${who} fin's box is ${length(depthM)} deep and would come out of the deck by ${length(-foamAboveM)}: use a box at most ${length(Math.max(0, depthM + foamAboveM - leastM))} deep, or a place where the board is thicker`,
    );
  else if (foamAboveM < leastM)
    make(
      "warning",
      "finset.foam-above",
      "box.depth",
      say`only ${length(foamAboveM)} of foam is left over the ${who} fin's box, where ${length(leastM)} is common practice: a box ${length(leastM - foamAboveM, "fine")} shallower, or a move up the board, would leave it`,
    );
}

function checkBeside(who: string, { foamUnderM, foamBesideM, toRailM, toStringerM }: Room, make: Make): void {
  const least = FIN_CLEARANCES;
  // A box that comes out of the deck has none beside it either: a shallower one is the cure, and is said above.
  if (foamUnderM !== null && foamUnderM > 0 && foamBesideM !== null && foamBesideM < least.foamBesideM)
    make(
      "warning",
      "finset.foam-beside",
      "fromRail",
      say`only ${length(foamBesideM)} of foam is left beside the ${who} fin's box at its floor, where ${length(least.foamBesideM)} is common practice: ${length(least.foamBesideM - foamBesideM, "fine")} farther from the rail would leave it`,
    );
  if (toRailM < least.toRailM)
    make(
      "warning",
      "finset.box-to-rail",
      "fromRail",
      say`the ${who} fin's box comes within ${length(toRailM)} of the rail, where ${length(least.toRailM)} is common practice: move the fin ${length(least.toRailM - toRailM, "fine")} inward`,
    );
  if (toStringerM !== null && toStringerM < least.toStringerM)
    make(
      "warning",
      "finset.box-to-stringer",
      "fromRail",
      say`the ${who} fin's box comes within ${length(toStringerM)} of the middle of the stringer: move the fin ${length(least.toStringerM - toStringerM, "fine")} outward, or rout the stringer on purpose`,
    );
}

function checkNext(
  both: Phrase,
  cure: (byM: number) => Phrase,
  { toNextM }: ClearancePlan,
  make: Make,
): void {
  const leastM = FIN_CLEARANCES.betweenBoxesM;
  if (toNextM === null) return;
  if (toNextM <= 0)
    make(
      "blocker",
      "finset.boxes-overlap",
      "fromTail",
      say`the ${both} fins are in one place: ${cure(leastM)}`,
    );
  else if (toNextM < leastM)
    make(
      "warning",
      "finset.box-to-box",
      "fromTail",
      say`only ${length(toNextM)} is left between the ${both} fins, where ${length(leastM)} is common practice: ${cure(leastM - toNextM)}`,
    );
}

function checkBow(who: string, { bowUnderBaseM }: ClearancePlan, make: Make): void {
  if (Math.abs(bowUnderBaseM) <= FIN_CLEARANCES.bowUnderBaseM) return;
  const kind = bowUnderBaseM > 0 ? "hollow" : "rounded";
  make(
    "note",
    "finset.base-not-flat",
    "base",
    say`the bottom is ${kind} by ${length(Math.abs(bowUnderBaseM), "fine")} under the ${who} fin's base: set the box by its ends and sand it in, or scribe the base`,
  );
}
