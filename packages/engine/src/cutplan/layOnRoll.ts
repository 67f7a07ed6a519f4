import { SHEARS_GAP_M } from "../constants/rollCutting";
import type { CutOff, PiecePart, PlacedPiece } from "./CutPlan";
import type { TurnedOutline } from "./outlineOnRoll";

/** A piece, or one strip of it, in every way it may lie on the roll. */
export interface PieceToLay {
  readonly id: string;
  readonly piece: string;
  readonly part: PiecePart;
  readonly pattern: string;
  readonly ways: readonly WayToLie[];
}

export interface WayToLie {
  readonly turnRad: number;
  readonly outline: TurnedOutline;
  /** Hangs over at each end along the roll, for trimming. */
  readonly hangsM: number;
}

interface Lying {
  readonly item: PieceToLay;
  readonly way: WayToLie;
  readonly alongM: number;
  readonly acrossM: number;
}

interface Cut {
  readonly lengthM: number;
  readonly lying: Lying[];
}

/** A cut's own length is held to this, which is finer than any tape. */
const SLACK_M = 1e-9;

/**
 * Pieces onto one roll as shears do it: the longest first, each cut straight off the roll, and every shorter one out of what is left
 * beside those already cut, where its box fits clear of their edges. Method: first fit by decreasing length on shelves (Coffman, Garey,
 * Johnson and Tarjan 1980), with the true edge of what lies on a shelf in place of its box.
 * @param items every one fits the roll's width in one way at least
 */
export function layOnRoll(
  items: readonly PieceToLay[],
  rollWidthM: number,
): { readonly lengthM: number; readonly cuts: readonly CutOff[]; readonly placed: readonly PlacedPiece[] } {
  const cuts: Cut[] = [];
  const order = items
    .map((item) => ({ item, way: shortestWay(item, rollWidthM) }))
    .sort((a, b) => lengthOf(b.way) - lengthOf(a.way));
  for (const { item, way } of order) {
    if (cuts.some((cut) => layBeside(cut, item, rollWidthM))) continue;
    cuts.push({ lengthM: lengthOf(way), lying: [{ item, way, alongM: 0, acrossM: 0 }] });
  }
  return describe(cuts);
}

const lengthOf = ({ outline, hangsM }: WayToLie): number => outline.lengthM + 2 * hangsM;

function shortestWay({ ways }: PieceToLay, rollWidthM: number): WayToLie {
  const fitting = ways.filter(({ outline }) => outline.widthM <= rollWidthM + SLACK_M);
  return fitting.reduce(
    (best, way) => (lengthOf(way) < lengthOf(best) - SLACK_M ? way : best),
    fitting[0] ?? ways[0]!,
  );
}

function layBeside(cut: Cut, item: PieceToLay, rollWidthM: number): boolean {
  for (const way of item.ways) {
    const lengthM = lengthOf(way);
    for (const alongM of listStarts(cut, lengthM)) {
      const acrossM = topOf(cut, alongM, alongM + lengthM) + SHEARS_GAP_M.value;
      if (acrossM + way.outline.widthM > rollWidthM + SLACK_M) continue;
      cut.lying.push({ item, way, alongM, acrossM });
      return true;
    }
  }
  return false;
}

/** At either end of the cut, and against what lies there. */
function listStarts({ lengthM, lying }: Cut, ownM: number): number[] {
  const againstM = lying.flatMap(({ way, alongM }) => [
    alongM + lengthOf(way) + SHEARS_GAP_M.value,
    alongM - ownM - SHEARS_GAP_M.value,
  ]);
  return [0, lengthM - ownM, ...againstM].filter(
    (startM) => startM >= -SLACK_M && startM + ownM <= lengthM + SLACK_M,
  );
}

/** How far across the roll it is taken between two places of a cut. */
function topOf({ lying }: Cut, fromM: number, toM: number): number {
  return Math.max(
    -SHEARS_GAP_M.value,
    ...lying.map(({ way, alongM, acrossM }) => {
      const gapM = SHEARS_GAP_M.value;
      if (alongM >= toM + gapM || alongM + lengthOf(way) <= fromM - gapM) return -gapM;
      const startM = alongM + way.hangsM;
      return acrossM + topOfOutline(way.outline, fromM - gapM - startM, toM + gapM - startM);
    }),
  );
}

function topOfOutline({ points }: TurnedOutline, fromM: number, toM: number): number {
  let topM = 0;
  points.forEach((point, i) => {
    const next = points[(i + 1) % points.length]!;
    if (point.alongM >= fromM && point.alongM <= toM) topM = Math.max(topM, point.acrossM);
    for (const atM of [fromM, toM]) {
      if (point.alongM < atM === next.alongM < atM) continue;
      const share = (atM - point.alongM) / (next.alongM - point.alongM);
      topM = Math.max(topM, point.acrossM + share * (next.acrossM - point.acrossM));
    }
  });
  return topM;
}

function describe(cuts: readonly Cut[]): ReturnType<typeof layOnRoll> {
  let fromStartM = 0;
  const described = cuts.map(({ lengthM, lying }, i) => {
    const id = `cut-${i + 1}`;
    const startM = fromStartM;
    fromStartM += lengthM;
    return {
      cut: { id, fromStartM: startM, lengthM, pieces: lying.map(({ item }) => item.id) },
      placed: lying.map(({ item, way, alongM, acrossM }, k): PlacedPiece => {
        const { piece, part, pattern } = item;
        return {
          id: item.id,
          piece,
          part,
          pattern,
          cut: id,
          from: k === 0 ? "roll" : "offcut",
          fromStartM: startM + alongM,
          fromEdgeM: acrossM,
          lengthM: lengthOf(way),
          widthM: way.outline.widthM,
          turnRad: way.turnRad,
        };
      }),
    };
  });
  return {
    lengthM: fromStartM,
    cuts: described.map(({ cut }) => cut),
    placed: described.flatMap(({ placed }) => placed),
  };
}
