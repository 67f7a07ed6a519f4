import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildCost } from "../src/cost/buildCost";
import type { CostBasis, CostBoard } from "../src/cost/CostInput";
import type { CostPlan } from "../src/cost/CostPlan";
import { buildLayup } from "../src/layup/buildLayup";
import type { LayupPlan } from "../src/layup/LayupPlan";
import type { PriceInput } from "../src/materials/PriceInput";
import { makeHalfCylinder } from "./fixtures/analyticShape";
import byHand from "./reference/cost/byHand.json";

const glass = { resin: "polyester", bottom: { layers: ["e-136"] }, deck: { layers: ["e-136"] } };
const whole = buildLayup({ glass, blank: { foam: "pu-48" } }, makeHalfCylinder(1.8, 0.2)).value as LayupPlan;
const box = {
  kind: "box",
  bodyVolumeM3: 0,
  pocketVolumeM3: 0,
  pocketVolumeLowM3: 0,
  pocketVolumeHighM3: 0,
} as const;
const layup: LayupPlan = {
  ...whole,
  coats: byHand.coats.map((coat, i) => ({ ...whole.coats[i]!, ...coat })),
  fittings: ["front-left", "front-right", "rear-left", "rear-right"].map((id) => ({ ...box, id })),
};
const basis: CostBasis = {
  layup,
  mix: {
    coats: byHand.coats.map(({ id }, i) => ({
      id,
      hardenerRatio: byHand.hardenerRatio,
      cups: i === 0 ? [] : [{ waxVolumeM3: byHand.waxVolumeM3, tintMassKg: 0 }],
    })),
  },
  cutplan: { rolls: [byHand.roll] },
};
const board = (prices: Readonly<Record<string, PriceInput>>): CostBoard => ({
  blank: { foam: "pu-48" },
  shop: { prices, rolls: { "e-136": { price: byHand.rollPrice } } },
});
const costOf = (prices: Readonly<Record<string, PriceInput>>) => buildCost(board(prices), basis);

it("says that cloth is in no line where it cannot be cut", () => {
  const codes = buildCost(board(byHand.prices), { ...basis, cutplan: null }).findings.map(({ code }) => code);
  expect(codes).toContain("cost.no-cloth");
  expect(costOf(byHand.prices).findings.map(({ code }) => code)).not.toContain("cost.no-cloth");
});

describe("a board priced by hand", () => {
  const plan = costOf(byHand.prices).value as CostPlan;
  const lineOf = (id: string) => plan.lines.find((line) => line.id === id);

  it("agrees line by line and in all", () => {
    const { expected, tolerance } = byHand;
    const near = (value: number | null | undefined, truth: number) =>
      expect(Math.abs((value ?? 0) - truth)).toBeLessThanOrEqual(tolerance * Math.max(1, truth));
    near(lineOf("polyester")?.mass?.onBoardKg, expected.baseOnBoardKg);
    near(lineOf("polyester")?.mass?.wastedKg, expected.baseWastedKg);
    near(lineOf("polyester-hardener")?.cost, expected.hardenerCost);
    near(lineOf("e-136")?.length?.wastedM, expected.clothWastedM);
    near(plan.materials, expected.materials);
    near(plan.toBuy, expected.toBuy);
    expect(plan.unpriced).toEqual([]);
  });
});

it("balances for any prices: bought = on the board + wasted + left, the totals are their lines", () => {
  const price = fc.double({ min: 0, max: 500, noNaN: true });
  const size = fc.double({ min: 0.01, max: 30, noNaN: true });
  const prices = fc.record(
    {
      polyester: fc.record({ price, packKg: size }),
      "polyester-hardener": fc.record({ price, packKg: size }),
      box: fc.record({ price, pieces: fc.integer({ min: 1, max: 9 }) }),
      "pu-48": fc.record({ price }),
      discs: fc.record({
        price,
        pieces: fc.integer({ min: 1, max: 50 }),
        use: fc.integer({ min: 1, max: 80 }),
      }),
    },
    { requiredKeys: [] },
  );
  fc.assert(
    fc.property(prices, (given) => {
      const plan = costOf(given as Record<string, PriceInput>).value as CostPlan;
      let [materials, toBuy] = [0, 0];
      for (const { id, cost, outlay, mass, length, volume, pieces } of plan.lines) {
        expect(plan.unpriced.includes(id)).toBe(cost === null);
        const [onBoard, wasted, , bought, left] = Object.values(mass ?? length ?? volume ?? pieces ?? {});
        if (cost === null || outlay === null) expect([bought, left]).toEqual([null, null]);
        else {
          expect(Math.abs(bought - onBoard - wasted - left)).toBeLessThan(1e-9);
          expect(left).toBeGreaterThan(-1e-6);
          expect(outlay).toBeGreaterThanOrEqual(cost - 1e-6);
        }
        materials += cost ?? 0;
        toBuy += outlay ?? 0;
      }
      expect(plan.materials).toBeCloseTo(materials, 9);
      expect(plan.toBuy).toBeCloseTo(toBuy, 9);
    }),
    { seed: 20260413, numRuns: 200 },
  );
});

describe("what is not priced, or cannot be", () => {
  const codes = (prices: Readonly<Record<string, PriceInput>>) =>
    costOf(prices).findings.map(({ code, severity }) => `${severity} ${code}`);

  it("is shown without a price, and the total says what it leaves out", () => {
    const { findings } = costOf({ box: { price: 15, pieces: 4 } });
    expect(findings[0]?.text).toBe(
      "the total leaves out what has no price: polyurethane, 48 kg/m³; laminating polyester; laminating polyester hardener; wax",
    );
  });

  it("asks for the pack of a liquid, and refuses what is below nought", () => {
    expect(codes({ polyester: { price: 40 } })).toContain("warning cost.pack");
    expect(codes({ polyester: { price: -1, packKg: 1 } })).toEqual(["blocker cost.price"]);
    expect(codes({ polyester: { price: 1, packKg: 0 } })).toEqual(["blocker cost.price"]);
  });

  it("has a note alone where there is no price at all, and waits for the glass", () => {
    const none = buildCost({}, basis);
    expect(none.findings.map(({ code }) => code)).toEqual(["cost.no-prices"]);
    expect(none.value?.materials).toBe(0);
    expect(buildCost({}, { ...basis, layup: null }).findings.map(({ code }) => code)).toEqual(["cost.waits"]);
  });
});
