import { describe, expect, it } from "vitest";
import { bowedOutline, finsetShape } from "../../tests/fixtures/finsetShape";
import type { BoardShape } from "../shape/BoardShape";
import { computeInsetM, computeToRailM } from "./railDistance";
import { buildSetOutLine } from "./SetOutLine";

/** Every tenth of a millimetre of the outline, then every micrometre about the best. */
function searchToRailM(shape: BoardShape, xM: number, yM: number): number {
  const distanceM = (atM: number) => Math.hypot(atM - xM, shape.halfWidthM("left", atM) - yM);
  const search = (fromM: number, toM: number, stepM: number) => {
    let bestM = fromM;
    for (let atM = fromM; atM <= toM; atM += stepM) if (distanceM(atM) < distanceM(bestM)) bestM = atM;
    return bestM;
  };
  const coarseM = search(0, shape.lengthM, 1e-4);
  const fineM = search(Math.max(0, coarseM - 2e-4), Math.min(shape.lengthM, coarseM + 2e-4), 1e-6);
  return distanceM(fineM);
}

const round = finsetShape({ lengthM: 1.8, left: bowedOutline(1.8, 0.26), right: bowedOutline(1.8, 0.26) });
const pin = finsetShape({
  lengthM: 1.8,
  left: bowedOutline(1.8, 0.26, 0.8),
  right: bowedOutline(1.8, 0.26, 0.8),
});

describe("a mark set square to a curved rail, against a search of the whole outline", () => {
  it.each([
    ["round", 0.1],
    ["round", 0.28],
    ["round", 0.9],
    ["pin", 0.12],
    ["pin", 0.35],
    ["pin", 1.4],
  ] as const)("on the %s board, %f m up", (name, uM) => {
    const shape = name === "round" ? round : pin;
    const fromRailM = 0.03;
    const line = buildSetOutLine(shape, "average");
    const insetM = computeInsetM(line, { side: "left", uM, fromRailM, by: "square-to-rail" });
    expect(searchToRailM(shape, uM, insetM!)).toBeCloseTo(fromRailM, 8);
    // A curved rail comes nearer than its square distance, so the mark stands farther in.
    expect(insetM!).toBeLessThanOrEqual(shape.halfWidthM("left", uM) - fromRailM + 1e-9);
  });

  it("gives the same shortest distance from points all over the bottom", () => {
    for (const xM of [0.05, 0.2, 0.5, 0.9, 1.3, 1.7])
      for (const share of [0, 0.4, 0.9, 0.99]) {
        const yM = share * pin.halfWidthM("left", xM);
        expect(computeToRailM(pin, "left", { xM, yM })).toBeCloseTo(searchToRailM(pin, xM, yM), 8);
      }
  });
});
