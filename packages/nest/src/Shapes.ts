import { computeNoFit } from "./computeNoFit";
import type { NestOrder, NestPiece } from "./NestOrder";
import { makeRing, type Ring, signedArea, turnAndMoveToOrigin } from "./Ring";
import { widenOutline } from "./widenOutline";

/** A piece turned one way, its box at the origin. */
export interface TurnedShape {
  /** Told apart by shape and turn: pieces that are alike share one. */
  readonly key: number;
  readonly turnRad: number;
  readonly points: ReadonlyArray<readonly [number, number]>;
  readonly lengthM: number;
  readonly widthM: number;
  /** With half the gap around it, nowhere inside the piece. */
  readonly outline: Ring;
}

/** A piece turns on its box at an exact angle; what is wider than the roll by less is a matter of arithmetic. */
const SLACK_M = 1e-9;

/** The pieces of an order in every way that they fit the roll, and the no-fit outlines between them, each made once. */
export class Shapes {
  /** For each piece, the ways it can lie. */
  readonly ways: ReadonlyArray<readonly TurnedShape[]>;
  readonly areaM2: number;
  readonly #noFits = new Map<number, Ring>();
  #count = 0;

  constructor(readonly order: NestOrder) {
    const made = new Map<string, readonly TurnedShape[]>();
    this.ways = order.pieces.map((piece) => {
      const key = JSON.stringify([piece.points, piece.turnsRad]);
      const known = made.get(key) ?? this.#makeWays(piece);
      made.set(key, known);
      return known;
    });
    this.areaM2 = order.pieces.reduce(
      (sumM2, { points }) => sumM2 + Math.abs(signedArea(points.map(toPair))),
      0,
    );
  }

  noFit(fixed: TurnedShape, moving: TurnedShape): Ring {
    const key = fixed.key * this.#count + moving.key;
    const known = this.#noFits.get(key);
    if (known !== undefined) return known;
    const ring = computeNoFit(fixed.outline, moving.outline);
    this.#noFits.set(key, ring);
    return ring;
  }

  #makeWays({ points, turnsRad }: NestPiece): readonly TurnedShape[] {
    return turnsRad
      .map((turnRad): TurnedShape => {
        const turned = turnAndMoveToOrigin(points.map(toPair), turnRad);
        const box = makeRing(turned);
        const outline = widenOutline(turned, this.order.gapM / 2);
        return { key: this.#count++, turnRad, points: turned, lengthM: box.maxX, widthM: box.maxY, outline };
      })
      .filter(({ widthM }) => widthM <= this.order.widthM + SLACK_M);
  }
}

function toPair({ alongM, acrossM }: { readonly alongM: number; readonly acrossM: number }) {
  return [alongM, acrossM] as const;
}
