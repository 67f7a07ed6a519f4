import { PLUG_CLEARANCES } from "../constants/finClearances";
import { type Phrase, say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding, type Severity } from "../foundation/stage";
import { type AlongBy, computeStraightM } from "./alongTail";
import { computeSkinM } from "./BoxFrame";
import type { Ground } from "./computeClearances";
import type { LeashPlugPlan } from "./FinsetPlan";
import type { LeashPlugInput } from "./FinsInput";
import { computeGapM } from "./footprint";
import { computeToRailM } from "./railDistance";
import { type BoardPoint, placeOnBoard, type SetOutLine } from "./SetOutLine";

export interface PlugRequest {
  readonly plug: LeashPlugInput;
  readonly line: SetOutLine;
  readonly along: AlongBy;
  readonly grounds: readonly Ground[];
}

export interface PlugResult {
  readonly value: LeashPlugPlan | null;
  readonly findings: readonly Finding[];
}

/**
 * Gives where the leash plug goes in the deck, and how much foam it leaves to the bottom and to the boxes beneath it.
 *
 * Its distance from the tail is read as the fins' are, although it goes into the deck: so near the tail both tapes agree.
 */
export function buildLeashPlug(request: PlugRequest): PlugResult {
  const { plug, line, along } = request;
  const bad = checkSizes(plug);
  if (bad !== null) return { value: null, findings: [bad] };
  const side = plug.side ?? "left";
  const uM = computeStraightM(line.shape, along, plug.fromTailM);
  const at = uM === null ? null : placeOnBoard(line, side, uM, plug.fromCentrelineM);
  if (uM === null || at === null || computeSkinM(line, "deck", at) === null)
    return { value: null, findings: [offTheDeck(plug)] };
  const next = findBox(request, at);
  const value: LeashPlugPlan = {
    side,
    fromTailM: uM,
    fromTailTapeM: line.shape.tapeFromStraightM(uM),
    fromCentrelineM: plug.fromCentrelineM,
    toRailM: computeToRailM(line.shape, side, at) - (plug.diameterM ?? 0) / 2,
    toStringerM: plug.diameterM === undefined ? null : Math.abs(at.yM) - plug.diameterM / 2,
    diameterM: plug.diameterM ?? null,
    depthM: plug.depthM ?? null,
    foamUnderM: computeFoamUnder(line, plug, at),
    toBoxM: next?.gapM ?? null,
    box: next?.id ?? null,
  };
  return { value, findings: checkPlug(value) };
}

function checkSizes(plug: LeashPlugInput): Finding | null {
  const sizes = {
    fromTail: plug.fromTailM,
    fromCentreline: plug.fromCentrelineM,
    diameter: plug.diameterM,
    depth: plug.depthM,
  };
  for (const [field, value] of Object.entries(sizes))
    if (value !== undefined && !(Number.isFinite(value) && value >= 0))
      return finding("blocker", "finset.bad-length", `fins.leashPlug.${field}`, [
        `the leash plug's ${field} has to be a length of nought or more`,
      ]);
  return null;
}

function offTheDeck(plug: LeashPlugInput): Finding {
  return finding(
    "blocker",
    "finset.plug-outside",
    "fins.leashPlug",
    say`the leash plug, ${length(plug.fromTailM)} from the tail and ${length(plug.fromCentrelineM)} from the centreline, is not on the deck`,
  );
}

/** Least over the middle and the rim, plumb. */
function computeFoamUnder(line: SetOutLine, plug: LeashPlugInput, at: BoardPoint): number | null {
  if (plug.depthM === undefined) return null;
  const radiusM = (plug.diameterM ?? 0) / 2;
  const rim = [
    [0, 0],
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const;
  const through = rim.map(([dx, dy]) =>
    computeThroughM(line, { xM: at.xM + dx * radiusM, yM: at.yM + dy * radiusM }),
  );
  if (through.includes(null)) return null;
  return Math.min(...through.map((throughM) => throughM!)) - plug.depthM;
}

function computeThroughM(line: SetOutLine, at: BoardPoint): number | null {
  const deckM = computeSkinM(line, "deck", at);
  const bottomM = computeSkinM(line, "bottom", at);
  return deckM === null || bottomM === null ? null : deckM - bottomM;
}

function findBox(
  { plug, line, grounds }: PlugRequest,
  at: BoardPoint,
): { readonly id: string; readonly gapM: number } | null {
  let next: { readonly id: string; readonly gapM: number } | null = null;
  for (const { spot, frame, footprint } of grounds) {
    if (spot.fin.box === undefined) continue;
    const apartM = computeGapM([at], footprint) - (plug.diameterM ?? 0) / 2;
    const throughM = computeThroughM(line, at);
    const gapM = apartM > 0 || throughM === null ? apartM : throughM - (plug.depthM ?? 0) - frame.depthM;
    if (next === null || gapM < next.gapM) next = { id: spot.id, gapM };
  }
  return next;
}

function checkPlug(plug: LeashPlugPlan): readonly Finding[] {
  const least = PLUG_CLEARANCES;
  const findings: Finding[] = [];
  const make = (severity: Severity, code: string, says: Phrase) =>
    findings.push(finding(severity, code, "fins.leashPlug", says));
  const { foamUnderM, toBoxM, toRailM, toStringerM } = plug;
  if (foamUnderM !== null && foamUnderM <= 0)
    make(
      "blocker",
      "finset.plug-too-deep",
      say`the leash plug is ${length(plug.depthM ?? 0)} deep and would come out of the bottom by ${length(-foamUnderM)}: use a shallower one, or set it farther up the board`,
    );
  else if (foamUnderM !== null && foamUnderM < least.foamUnderM)
    make(
      "warning",
      "finset.plug-foam",
      say`only ${length(foamUnderM)} of foam is left under the leash plug, where ${length(least.foamUnderM)} is common practice: set it farther up the board, or use a shallower one`,
    );
  if (toBoxM !== null && toBoxM <= 0)
    make(
      "blocker",
      "finset.plug-in-box",
      say`the leash plug runs into the ${plug.box ?? ""} fin's box beneath it: move the plug along the board or to the other side`,
    );
  else if (toBoxM !== null && toBoxM < least.toBoxM)
    make(
      "warning",
      "finset.plug-to-box",
      say`only ${length(toBoxM)} is left between the leash plug and the ${plug.box ?? ""} fin's box, where ${length(least.toBoxM)} is common practice: move the plug ${length(least.toBoxM - toBoxM, "fine")} away`,
    );
  if (toRailM < least.toRailM)
    make(
      "warning",
      "finset.plug-to-rail",
      say`the leash plug comes within ${length(toRailM)} of the rail, where ${length(least.toRailM)} is common practice: move it ${length(least.toRailM - toRailM, "fine")} in`,
    );
  if (toStringerM !== null && toStringerM < least.toStringerM)
    make(
      "warning",
      "finset.plug-to-stringer",
      say`the leash plug comes within ${length(toStringerM)} of the middle of the stringer: its hole would cut the stringer, so move it ${length(least.toStringerM - toStringerM, "fine")} out`,
    );
  return findings;
}
