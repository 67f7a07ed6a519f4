import { say } from "../foundation/phrase";
import { length } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { Side } from "../survey/Side";
import { SIDES } from "../survey/Side";
import { type AlongBy, computeStraightM } from "./alongTail";
import type { FilledFin } from "./FilledFins";
import type { FinSpot, OwnRails } from "./FinSpot";
import type { SidesRule } from "./FinsInput";
import { computeInsetM } from "./railDistance";
import { resolveToe, type ToeSpot } from "./resolveToe";
import type { SetOutLine } from "./SetOutLine";

/** A fin of the file with its place in it. */
export interface ListedFin {
  readonly fin: FilledFin;
  readonly path: string;
}

export interface PlaceRequest {
  readonly fins: readonly ListedFin[];
  readonly sides: SidesRule;
  readonly line: SetOutLine;
  readonly along: AlongBy;
}

export interface PlacedFins {
  readonly spots: readonly FinSpot[];
  readonly ownRails: readonly OwnRails[];
  readonly findings: readonly Finding[];
}

interface Unturned extends ToeSpot {
  readonly side: Side | "centre";
}

/**
 * Places every fin of the set on the bottom under one of the rules for the two sides.
 *
 * Both sides are measured from their own rail; `rail` leaves them so, `average` and `centreline` set both at the mean of
 * the two distances from their line.
 */
export function placeFins(request: PlaceRequest): PlacedFins {
  const findings: Finding[] = [];
  const ownRails: OwnRails[] = [];
  const unturned: Unturned[] = [];
  for (const listed of request.fins) {
    const placed = placeFin(request, listed);
    if (!("base" in placed)) {
      // What is wrong with how all of them are measured is said once.
      if (!findings.some(({ code, path }) => code === placed.code && path === placed.path))
        findings.push(placed);
      continue;
    }
    const { base, own } = placed;
    if (own === null) {
      unturned.push({ ...listed, side: "centre", base });
      continue;
    }
    ownRails.push(own);
    const meanM = (own.leftM + own.rightM) / 2;
    for (const side of SIDES) {
      const ownM = side === "left" ? own.leftM : own.rightM;
      unturned.push({ ...listed, side, base: { ...base, vM: request.sides === "rail" ? ownM : meanM } });
    }
  }
  return { ...turn(unturned, findings), ownRails };
}

type Placed = { readonly base: ToeSpot["base"]; readonly own: OwnRails | null };

function placeFin({ line, along }: PlaceRequest, { fin, path }: ListedFin): Placed | Finding {
  const uM = computeStraightM(line.shape, along, fin.fromTailM);
  if (uM === null) return offTheBoard(fin, path, along);
  const base = { uM, vM: 0, baseM: fin.baseM, noseUM: line.noseUM };
  if (fin.fromRailM === undefined) return { base, own: null };
  const inset = (side: Side) =>
    computeInsetM(line, { side, uM, fromRailM: fin.fromRailM!, by: fin.fromRailBy });
  const [leftM, rightM] = [inset("left"), inset("right")];
  if (leftM === null || rightM === null) return offTheBoard(fin, path, along);
  return { base, own: { fin: fin.fin, leftM, rightM } };
}

function offTheBoard(fin: FilledFin, path: string, along: AlongBy): Finding {
  if (along.of === "crotch" && along.crotchM === null)
    return finding(
      "blocker",
      "finset.no-crotch",
      "fins.fromTailOf",
      say`the fins are measured from the crotch, and this tail has none: measure from the tips, or survey the tail as a swallow with its depth`,
    );
  return finding(
    "blocker",
    "finset.outside-outline",
    `${path}.fromTail`,
    say`the ${fin.fin} fin's mark, ${length(fin.fromTailM)} from the tail, is not on the board`,
  );
}

function turn(unturned: readonly Unturned[], earlier: readonly Finding[]): Omit<PlacedFins, "ownRails"> {
  const findings = [...earlier];
  const spots: FinSpot[] = [];
  for (const spot of unturned) {
    const beside = new Map(
      unturned.filter((other) => isBeside(spot, other)).map((other) => [other.fin.fin, other]),
    );
    const toe = spot.side === "centre" ? 0 : resolveToe({ spot, beside });
    if (typeof toe !== "number") {
      if (!findings.some((known) => known.text === toe.text)) findings.push(toe);
      continue;
    }
    const id = spot.side === "centre" ? spot.fin.fin : `${spot.fin.fin}-${spot.side}`;
    const { fin, path, side } = spot;
    spots.push({ id, fin, path, side, uM: spot.base.uM, vM: spot.base.vM, toeRad: toe });
  }
  return { spots, findings };
}

const isBeside = (spot: Unturned, other: Unturned) => other.side === spot.side || other.side === "centre";
