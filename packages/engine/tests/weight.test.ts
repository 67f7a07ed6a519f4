import { describe, expect, it } from "vitest";
import { buildLayup } from "../src/layup/buildLayup";
import type { FittingsInput } from "../src/layup/FittingsInput";
import type { GlassInput } from "../src/layup/GlassInput";
import type { LayupPlan } from "../src/layup/LayupPlan";
import { buildWeight } from "../src/weight/buildWeight";
import type { WeightPlan } from "../src/weight/WeightPlan";
import { makeLensBoard } from "./fixtures/analyticShape";
import stagesAndFloat from "./reference/weight/stagesAndFloat.json";
import board from "./reference/weight/wholeBoard.json";

describe("a 28 L board worked by hand", () => {
  const shape = makeLensBoard(board.body);
  const weigh = (fins?: FittingsInput) => {
    const layup = buildLayup({ glass: board.glass as GlassInput, blank: board.blank, fins }, shape)
      .value as LayupPlan;
    return { layup, weight: buildWeight({ blank: board.blank }, shape, layup).value as WeightPlan };
  };
  const { layup, weight } = weigh();
  const { expected, tolerance } = board;

  it("is a board of 28 litres with the rail line of the quadrature", () => {
    expect(Math.abs(shape.plan.volumeM3 / expected.volumeM3 - 1)).toBeLessThanOrEqual(tolerance.tight);
    expect(Math.abs(layup.railLineM / expected.railLineM - 1)).toBeLessThanOrEqual(tolerance.tight);
  });

  it.each(["foamKg", "stringerKg", "clothKg", "resinKg"] as const)("%s agrees", (part) => {
    expect(Math.abs(weight[part] / expected[part] - 1)).toBeLessThanOrEqual(tolerance.part);
    expect(Math.abs(weight[part] / expected[part] - 1)).toBeLessThanOrEqual(tolerance.tight);
  });

  it("agrees in all, and lies inside what builders weigh (common practice, no source)", () => {
    expect(Math.abs(weight.finishedKg / expected.finishedKg - 1)).toBeLessThanOrEqual(tolerance.total);
    expect(weight.finishedKg).toBeGreaterThan(board.weighedRangeKg[0]!);
    expect(weight.finishedKg).toBeLessThan(board.weighedRangeKg[1]!);
  });

  it("stays inside with four boxes and a plug", () => {
    const fins: FittingsInput = {
      arrangement: "quad",
      boxes: "after-fill",
      set: [
        { fin: "front", fromTailM: 0.285, fromRailM: 0.032 },
        { fin: "rear", fromTailM: 0.15, fromRailM: 0.05 },
      ],
      leashPlug: {},
    };
    const { weight: boxed } = weigh(fins);
    expect(boxed.finishedKg).toBeGreaterThan(weight.finishedKg);
    expect(boxed.finishedKg).toBeLessThan(board.weighedRangeKg[1]!);
  });
});

describe("the same board by stage, and afloat, worked by hand", () => {
  const shape = makeLensBoard(board.body);
  const layup = buildLayup({ glass: board.glass as GlassInput, blank: board.blank }, shape)
    .value as LayupPlan;
  const { expected, tolerance, riderKg } = stagesAndFloat;
  const weigh = (order?: { readonly riderMassKg: number }) =>
    buildWeight({ blank: board.blank, order }, shape, layup).value as WeightPlan;
  const near = (value: number, truth: number) =>
    expect(Math.abs(value / truth - 1)).toBeLessThanOrEqual(tolerance.relative);

  it("grows coat by coat", () => {
    const { stages } = weigh();
    expect(stages.map(({ id }) => id)).toEqual(expected.stages.map(({ id }) => id));
    expected.stages.forEach(({ massKg }, i) => {
      near(stages[i]!.massKg, massKg);
    });
  });

  it("pushes water aside, carries, and goes under a rider", () => {
    const { float } = weigh({ riderMassKg: riderKg });
    near(float.displacesKg, expected.displacesKg);
    near(float.carriesKg, expected.carriesKg);
    near(float.reserveKg ?? 0, expected.reserveKg);
    expect(weigh().float.reserveKg).toBeNull();
  });
});
