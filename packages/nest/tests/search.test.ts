import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildNestOrders, checkNestOrder, type NestOrder, type NestPiece, searchNest } from "../src/index";
import { DEMO_ORDER } from "./demoOrder";
import { areaOf, listFaults, nest } from "./roll";

/** Star shapes about a middle: most are not convex. */
const outline = fc
  .array(fc.double({ min: 0.05, max: 0.3, noNaN: true }), { minLength: 3, maxLength: 9 })
  .map((radiiM) =>
    radiiM.map((radiusM, i) => {
      const angle = (2 * Math.PI * i) / radiiM.length;
      return { alongM: radiusM * Math.cos(angle), acrossM: radiusM * Math.sin(angle) };
    }),
  );
const anyOrder = fc
  .record({
    outlines: fc.array(outline, { minLength: 1, maxLength: 6 }),
    gapM: fc.constantFrom(0, 0.01),
    eighths: fc.array(fc.integer({ min: 0, max: 7 }), { minLength: 1, maxLength: 3 }),
  })
  .map(
    ({ outlines, gapM, eighths }): NestOrder => ({
      cloth: "e-136",
      widthM: 0.65,
      gapM,
      pieces: outlines.map(
        (points, i): NestPiece => ({
          id: `piece-${i}`,
          points,
          turnsRad: eighths.map((eighth) => (eighth * Math.PI) / 4),
        }),
      ),
    }),
  );

describe("searchNest", () => {
  it("keeps pieces of any shape inside the roll and apart, and none is lost", () => {
    fc.assert(
      fc.property(anyOrder, (order) => {
        const lay = nest(order, { seed: 3, layings: 40 });
        expect(listFaults(lay, lay.placed)).toEqual([]);
        const wantedM2 = order.pieces.reduce((sum, { points }) => sum + areaOf(points), 0);
        expect(lay.placed.reduce((sum, { points }) => sum + areaOf(points), 0)).toBeCloseTo(wantedM2, 9);
        expect(lay.boundM).toBeLessThanOrEqual(lay.lengthM + 1e-9);
      }),
      { seed: 20, numRuns: 60 },
    );
  });

  it("leaves the gap for the shears", () => {
    const [order] = buildNestOrders(DEMO_ORDER);
    const lay = nest(order!, { seed: 1, layings: 200 });
    for (const [i, a] of lay.placed.entries()) {
      for (const b of lay.placed.slice(i + 1)) {
        expect(leastDistanceM(a.points, b.points)).toBeGreaterThan(order!.gapM - 1e-5);
      }
    }
  });

  it("gives the same lay for the same seed", () => {
    const [order] = buildNestOrders(DEMO_ORDER);
    const search = { seed: 7, layings: 300 };
    expect(nest(order!, search)).toEqual(nest(order!, search));
  });

  it("tells of progress, each time with a whole lay that is never worse, and can be left at any time", () => {
    const [order] = buildNestOrders(DEMO_ORDER);
    const told = [...searchNest(order!, { seed: 1, layings: 400 })];
    expect(told.length).toBeGreaterThan(10);
    for (const [i, { made, of, best }] of told.entries()) {
      expect(made).toBeLessThanOrEqual(of);
      expect(best.placed).toHaveLength(order!.pieces.length);
      if (i > 0) expect(best.lengthM).toBeLessThanOrEqual(told[i - 1]!.best.lengthM + 0.02);
    }
  });
});

describe("checkNestOrder", () => {
  const piece = (over: Partial<NestPiece> = {}): NestPiece => ({
    id: "deck-1",
    points: [
      { alongM: 0, acrossM: 0 },
      { alongM: 2, acrossM: 0 },
      { alongM: 2, acrossM: 0.6 },
      { alongM: 0, acrossM: 0.6 },
    ],
    turnsRad: [0],
    ...over,
  });
  const order = (over: Partial<NestOrder> = {}): NestOrder => ({
    cloth: "e-136",
    widthM: 0.7,
    gapM: 0.01,
    pieces: [piece()],
    ...over,
  });

  it.each([
    ["a roll that will do", order(), []],
    ["no pieces", order({ pieces: [] }), [{ kind: "no-pieces" }]],
    ["a roll of no width", order({ widthM: 0 }), [{ kind: "no-roll", widthM: 0 }]],
    [
      "a roll narrower than its piece",
      order({ widthM: 0.5 }),
      [{ kind: "too-wide", piece: "deck-1", neededM: 0.6 }],
    ],
    [
      "a piece that may lie in no way",
      order({ pieces: [piece({ turnsRad: [] })] }),
      [{ kind: "no-shape", piece: "deck-1" }],
    ],
  ])("%s", (_, given, faults) => {
    expect(checkNestOrder(given)).toEqual(faults);
    if (faults.length > 0) expect(() => nest(given, { seed: 1, layings: 10 })).toThrow("cannot be laid out");
  });
});

interface At {
  readonly alongM: number;
  readonly acrossM: number;
}

/** Of outlines that do not cross: the least from a corner of one to an edge of the other. */
function leastDistanceM(a: readonly At[], b: readonly At[]): number {
  const oneWay = (corners: readonly At[], edges: readonly At[]) =>
    Math.min(
      ...corners.flatMap((corner) =>
        edges.map((from, i) => toEdgeM(corner, from, edges[(i + 1) % edges.length]!)),
      ),
    );
  return Math.min(oneWay(a, b), oneWay(b, a));
}

function toEdgeM(corner: At, from: At, to: At): number {
  const [ux, uy] = [to.alongM - from.alongM, to.acrossM - from.acrossM];
  const [wx, wy] = [corner.alongM - from.alongM, corner.acrossM - from.acrossM];
  const share = Math.min(1, Math.max(0, (ux * wx + uy * wy) / (ux * ux + uy * uy)));
  return Math.hypot(wx - share * ux, wy - share * uy);
}
