import { describe, expect, test } from "vitest";
import type { FlowPiece } from "./FlowPiece";
import { flowPieces } from "./flowPieces";

const ROOM = { x: 10, y: 20, widthMm: 100, heightMm: 50 };

/** A piece that tells where it was put, in the name of its block's text. */
function piece(heightMm: number, { gapMm = 0, staysWithNext = false } = {}): FlowPiece {
  return { heightMm, gapMm, staysWithNext, place: ({ x, y }) => ({ tag: "P", alt: `${x} ${y}` }) };
}

const placesIn = (pieces: readonly FlowPiece[]) =>
  flowPieces(pieces, () => ROOM).map((column) => column.map(({ alt }) => alt));

describe("pieces of a column", () => {
  test("lie one under the other, their gaps over them but not at the head", () => {
    expect(placesIn([piece(10, { gapMm: 5 }), piece(10, { gapMm: 5 })])).toEqual([["10 20", "10 35"]]);
  });

  test("go on in the next column where they do not fit", () => {
    expect(placesIn([piece(30), piece(20), piece(1, { gapMm: 9 })])).toEqual([["10 20", "10 50"], ["10 20"]]);
  });

  test("a heading does not stay behind alone", () => {
    const pieces = [piece(40), piece(5, { staysWithNext: true }), piece(20)];
    expect(placesIn(pieces)).toEqual([["10 20"], ["10 20", "10 25"]]);
  });

  test("what is higher than a column stands alone in one", () => {
    expect(placesIn([piece(10), piece(80), piece(10)])).toEqual([["10 20"], ["10 20"], ["10 20"]]);
  });
});
