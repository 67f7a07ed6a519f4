import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTHS } from "../../src/constants/cloths";
import { buildLayup } from "../../src/layup/buildLayup";
import type { FittingsInput } from "../../src/layup/FittingsInput";
import type { LayupPlan } from "../../src/layup/LayupPlan";
import { buildWeight } from "../../src/weight/buildWeight";
import type { WeightPlan } from "../../src/weight/WeightPlan";
import { makeHalfCylinder } from "../fixtures/analyticShape";

const SEED = { seed: 20260412, numRuns: 150 };

const faces = fc.record({
  layers: fc.array(fc.constantFrom(...Object.keys(CLOTHS)), { maxLength: 3 }),
  lapM: fc.double({ min: 0, max: 0.08, noNaN: true }),
});
const boards = fc.record({
  lengthM: fc.double({ min: 1.4, max: 3.2, noNaN: true }),
  radiusM: fc.double({ min: 0.15, max: 0.3, noNaN: true }),
  glass: fc.record({
    resin: fc.constant("epoxy"),
    bottom: faces,
    deck: faces,
    finish: fc.constantFrom("sanded" as const, "gloss" as const),
  }),
  foam: fc.constantFrom("pu-48", "eps-19", "xps-30"),
  boxes: fc.constantFrom("before-glass" as const, "after-laminate" as const, "after-fill" as const),
  riderMassKg: fc.option(fc.double({ min: 30, max: 130, noNaN: true }), { nil: undefined }),
});

function weigh({
  lengthM,
  radiusM,
  glass,
  foam,
  boxes,
  riderMassKg,
}: typeof boards extends fc.Arbitrary<infer Made> ? Made : never) {
  const shape = makeHalfCylinder(lengthM, radiusM);
  const fins: FittingsInput = {
    arrangement: "single",
    boxes,
    set: [{ fin: "centre", fromTailM: 0.2 }],
    leashPlug: {},
  };
  const blank = { foam };
  const layup = buildLayup({ glass, blank, fins }, shape).value as LayupPlan;
  const order = riderMassKg === undefined ? undefined : { riderMassKg };
  return { layup, shape, weight: buildWeight({ blank, fins, order }, shape, layup).value as WeightPlan };
}

describe("the weight by stage of any sensible board", () => {
  it("grows with every coat that takes nothing away, by that coat's resin and cloth, and ends at the sum of the parts", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { layup, weight } = weigh(board);
        const { stages, foamKg, stringerKg, clothKg, resinKg, fittingsKg, finishedKg } = weight;
        expect(stages[0]?.massKg).toBeCloseTo(foamKg + stringerKg, 9);
        stages.slice(1).forEach((stage, i) => {
          const coat = layup.coats.find(({ id }) => id === stage.id);
          const gainedKg = stage.massKg - stages[i]!.massKg;
          if (coat?.kind === "box") return;
          const pieces = layup.pieces.filter((piece) => piece.coat === stage.id);
          const clothOnKg = pieces.reduce((sumKg, piece) => sumKg + piece.clothMassKg, 0);
          expect(gainedKg).toBeCloseTo((coat?.keptMassKg ?? 0) + clothOnKg, 9);
          expect(gainedKg).toBeGreaterThan(0);
        });
        expect(stages.at(-1)?.massKg).toBeCloseTo(finishedKg, 9);
        expect(finishedKg).toBeCloseTo(foamKg + stringerKg + clothKg + resinKg + fittingsKg, 9);
      }),
      SEED,
    );
  });

  it("carries by Archimedes what the water pushed aside weighs more than the board, and the rider takes from that", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { shape, weight } = weigh(board);
        const { float, finishedKg } = weight;
        expect(float.displacesKg).toBeCloseTo(1025 * shape.plan.volumeM3, 9);
        expect(float.carriesKg + finishedKg).toBeCloseTo(float.displacesKg, 9);
        expect(float.carriesLowKg <= float.carriesKg && float.carriesKg <= float.carriesHighKg).toBe(true);
        if (board.riderMassKg === undefined) expect(float.reserveKg).toBeNull();
        else expect((float.reserveKg ?? 0) + board.riderMassKg).toBeCloseTo(float.carriesKg, 9);
      }),
      SEED,
    );
  });
});
