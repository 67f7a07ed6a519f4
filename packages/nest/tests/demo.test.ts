import { outlineOnRoll } from "@lapline/engine";
import { describe, expect, it } from "vitest";
import { buildNestOrders } from "../src/index";
import { DEMO_ORDER, SHED_ROLLS } from "./demoOrder";
import { areaOf, listFaults, nest } from "./roll";

const SEARCH = { seed: 1, layings: 3000 };
const INCH_M = 0.0254;

const asGiven = buildNestOrders(DEMO_ORDER);
const onWide = buildNestOrders(DEMO_ORDER, { "e-136": 38 * INCH_M, "e-203": 38 * INCH_M });
const ofShed = buildNestOrders(DEMO_ORDER, SHED_ROLLS);
const lays = (orders: typeof asGiven) => orders.map((order) => ({ order, lay: nest(order, SEARCH) }));
const given = lays(asGiven);
const wide = lays(onWide);
const shed = lays(ofShed);
const every = [...given, ...wide, ...shed];

/** All rolls of an order together: how much shorter than by boxes, and how far above the bound. */
function inAll(laid: typeof given): { readonly savedRatio: number; readonly overBoundRatio: number } {
  const sum = (of: "lengthM" | "boxesM" | "boundM") => laid.reduce((sumM, { lay }) => sumM + lay[of], 0);
  return {
    savedRatio: 1 - sum("lengthM") / sum("boxesM"),
    overBoundRatio: sum("lengthM") / sum("boundM") - 1,
  };
}

describe("the demo order, three boards of two cloths", () => {
  it("is cut from the rolls that the board files name", () => {
    expect(asGiven.map(({ cloth, widthM, pieces }) => [cloth, widthM, pieces.length])).toEqual([
      ["e-136", 0.6858, 6],
      ["e-203", 0.762, 5],
      ["e-136", 0.762, 1],
    ]);
  });

  it.each(every)("$order.cloth on $order.widthM m: inside the roll, none on another", ({ lay }) => {
    expect(listFaults(lay, lay.placed)).toEqual([]);
  });

  it.each(every)("$order.cloth on $order.widthM m: every piece once, whole", ({ order, lay }) => {
    const ids = (pieces: ReadonlyArray<{ readonly id: string }>) => pieces.map(({ id }) => id).sort();
    expect(ids(lay.placed)).toEqual(ids(order.pieces));
    const placedM2 = lay.placed.reduce((sum, { points }) => sum + areaOf(points), 0);
    const piecesM2 = DEMO_ORDER.flatMap(({ name, plan }) =>
      (plan.layup?.pieces ?? []).map((piece) => ({
        id: `${name} ${piece.id}`,
        areaM2: plan.layup?.patterns.find(({ id }) => id === piece.pattern)?.areaM2 ?? Number.NaN,
      })),
    )
      .filter(({ id }) => ids(order.pieces).includes(id))
      .reduce((sum, { areaM2 }) => sum + areaM2, 0);
    expect(placedM2).toBeCloseTo(piecesM2, 9);
    expect(lay.areaM2).toBeCloseTo(piecesM2, 9);
  });

  it.each(every)("$order.cloth on $order.widthM m: within 4 % of the bound", ({ lay }) => {
    expect(lay.lengthM).toBeGreaterThanOrEqual(lay.boundM);
    expect(lay.lengthM / lay.boundM).toBeLessThan(1.04);
  });

  it("is at least 15 % shorter than by boxes, and within 10 % of the bound, as the shed cuts it", () => {
    expect(shed.map(({ order }) => [order.cloth, order.pieces.length])).toEqual([
      ["e-136", 7],
      ["e-203", 5],
    ]);
    const { savedRatio, overBoundRatio } = inAll(shed);
    expect(savedRatio).toBeGreaterThanOrEqual(0.15);
    expect(overBoundRatio).toBeLessThanOrEqual(0.1);
  });

  it("cannot be 5 % shorter than by boxes on the boards' own rolls, which full-length pieces fill from edge to edge", () => {
    for (const { lay } of given) {
      expect(lay.boundM / lay.boxesM).toBeGreaterThan(0.95);
      expect(lay.lengthM).toBeLessThanOrEqual(lay.boxesM + 1e-9);
    }
    expect(inAll(given).overBoundRatio).toBeLessThanOrEqual(0.1);
  });

  it("is 15 % shorter on a roll 38 in wide for the 4 oz cloth, which has patches to lay beside", () => {
    const [fourOz] = wide;
    expect(inAll([fourOz!]).savedRatio).toBeGreaterThanOrEqual(0.15);
    expect(inAll(wide).overBoundRatio).toBeLessThanOrEqual(0.1);
  });

  it("takes less cloth by area from the boards' own rolls: what a wide roll saves in length it has in width", () => {
    const areaM2 = (laid: typeof given) =>
      laid.reduce((sumM2, { lay }) => sumM2 + lay.lengthM * lay.widthM, 0);
    expect(areaM2(given)).toBeLessThan(areaM2(shed));
  });
});

describe("the plan's own cuts, by shears", () => {
  const rolls = DEMO_ORDER.flatMap(({ name, plan }) =>
    (plan.cutplan?.rolls ?? []).map((roll) => ({ name, roll, patterns: plan.layup?.patterns ?? [] })),
  );

  it.each(rolls)("$name, $roll.cloth: inside the roll, none on another", ({ roll, patterns }) => {
    const placed = roll.placed.map((each) => ({
      id: each.id,
      points: outlineOnRoll(patterns.find(({ id }) => id === each.pattern)!, each),
    }));
    expect(placed.length).toBeGreaterThan(0);
    expect(listFaults(roll, placed)).toEqual([]);
    const areaM2 = placed.reduce((sum, { points }) => sum + areaOf(points), 0);
    expect(roll.usedRatio).toBeCloseTo(areaM2 / (roll.widthM * roll.lengthM), 9);
  });
});
