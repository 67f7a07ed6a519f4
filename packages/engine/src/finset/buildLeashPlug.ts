import { PLUG_CLEARANCES } from "../constants/finClearances";
import {
  CURE_BEFORE_LOAD_S,
  PLUG_PATCH_OVERLAP_M,
  PLUG_PULL_MASS_KG,
  STANDARD_GRAVITY_M_S2,
} from "../constants/finSetting";
import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { type AlongBy, computeFromCrotchM, computeStraightM } from "./alongTail";
import { computeSkinM } from "./BoxFrame";
import { checkLeashPlug } from "./checkLeashPlug";
import type { Ground } from "./computeClearances";
import type { FilledPlug } from "./FilledFins";
import type { LeashPlugPlan } from "./FinsetPlan";
import { computeGapM } from "./footprint";
import { computeToRailM } from "./railDistance";
import { type BoardPoint, placeOnBoard, type SetOutLine } from "./SetOutLine";

export interface PlugRequest {
  readonly plug: FilledPlug;
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
  const { side } = plug;
  const uM = computeStraightM(line.shape, along, plug.fromTailM);
  const at = uM === null ? null : placeOnBoard(line, side, uM, plug.fromCentrelineM);
  if (uM === null || at === null || computeSkinM(line, "deck", at) === null)
    return { value: null, findings: [offTheDeck(plug)] };
  const next = findBox(request, at);
  const value: LeashPlugPlan = {
    side,
    fromTailM: uM,
    fromTailTapeM: line.shape.tapeFromStraightM(uM),
    fromCrotchTapeM: computeFromCrotchM(line.shape, along, uM),
    fromCentrelineM: plug.fromCentrelineM,
    toRailM: computeToRailM(line.shape, side, at) - plug.diameterM / 2,
    toStringerM: Math.abs(at.yM) - plug.diameterM / 2,
    diameterM: plug.diameterM,
    depthM: plug.depthM ?? null,
    ...computeDepths(request, at),
    toBoxM: next?.gapM ?? null,
    box: next?.id ?? null,
    patchDiameterM: plug.diameterM + 2 * PLUG_PATCH_OVERLAP_M.value,
    cureBeforeLoadS: CURE_BEFORE_LOAD_S.value,
    pullTestN: PLUG_PULL_MASS_KG.value * STANDARD_GRAVITY_M_S2.value,
    pullTestMassKg: PLUG_PULL_MASS_KG.value,
  };
  return { value, findings: checkLeashPlug(value) };
}

function checkSizes(plug: FilledPlug): Finding | null {
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

function offTheDeck(plug: FilledPlug): Finding {
  return finding(
    "blocker",
    "finset.plug-outside",
    "fins.leashPlug",
    say`the leash plug, ${length(plug.fromTailM)} from the tail and ${length(plug.fromCentrelineM)} from the centreline, is not on the deck`,
  );
}

type Depths = Pick<LeashPlugPlan, "foamUnderM" | "boxBeneath" | "foamToBoxM" | "mostDepthM">;

/** What the plug's depth leaves to the bottom and to a box beneath it, and how deep it may be. */
function computeDepths({ plug, line, grounds }: PlugRequest, at: BoardPoint): Depths {
  const leastM = computeLeastThroughM(line, plug, at);
  const throughM = computeThroughM(line, at);
  const radiusM = plug.diameterM / 2;
  const beneath = grounds.find(
    ({ spot, footprint }) => spot.fin.box !== undefined && computeGapM([at], footprint) <= radiusM,
  );
  const overBoxM = beneath === undefined || throughM === null ? null : throughM - beneath.frame.depthM;
  const mostM = [
    ...(leastM === null ? [] : [leastM - PLUG_CLEARANCES.foamUnderM]),
    ...(overBoxM === null ? [] : [overBoxM - PLUG_CLEARANCES.toBoxM]),
  ];
  return {
    foamUnderM: leastM === null || plug.depthM === undefined ? null : leastM - plug.depthM,
    boxBeneath: beneath?.spot.id ?? null,
    foamToBoxM: overBoxM === null || plug.depthM === undefined ? null : overBoxM - plug.depthM,
    mostDepthM: mostM.length === 0 ? null : Math.max(0, Math.min(...mostM)),
  };
}

const RIM = [
  [0, 0],
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

/** Deck to bottom, the least over the middle and the rim, plumb. */
function computeLeastThroughM(line: SetOutLine, plug: FilledPlug, at: BoardPoint): number | null {
  const radiusM = plug.diameterM / 2;
  let leastM = Number.POSITIVE_INFINITY;
  for (const [dx, dy] of RIM) {
    const throughM = computeThroughM(line, { xM: at.xM + dx * radiusM, yM: at.yM + dy * radiusM });
    if (throughM === null) return null;
    leastM = Math.min(leastM, throughM);
  }
  return leastM;
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
    const apartM = computeGapM([at], footprint) - plug.diameterM / 2;
    const throughM = computeThroughM(line, at);
    const gapM = apartM > 0 || throughM === null ? apartM : throughM - (plug.depthM ?? 0) - frame.depthM;
    if (next === null || gapM < next.gapM) next = { id: spot.id, gapM };
  }
  return next;
}
