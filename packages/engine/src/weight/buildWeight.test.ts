import { describe, expect, it } from "vitest";
import { makeHalfCylinder } from "../../tests/fixtures/analyticShape";
import { buildLayup } from "../layup/buildLayup";
import type { FittingsInput } from "../layup/FittingsInput";
import type { BlankInput } from "../layup/GlassInput";
import type { LayupPlan } from "../layup/LayupPlan";
import { buildWeight } from "./buildWeight";
import type { WeightPlan } from "./WeightPlan";

const shape = makeHalfCylinder(1.5, 0.2);
const glass = {
  resin: "polyester",
  bottom: { layers: ["e-136"], lapM: 0.05 },
  deck: { layers: ["e-136"], lapM: 0.05 },
};
const layup = buildLayup({ glass, blank: { foam: "pu-48" } }, shape).value as LayupPlan;
const weigh = (blank: BlankInput) => buildWeight({ blank }, shape, layup);
const codes = (blank: BlankInput) => weigh(blank).findings.map(({ code, severity }) => `${severity} ${code}`);

describe("the blank", () => {
  it("by volume: foam is what the stringer leaves of it, times its density", () => {
    const value = weigh({ foam: "pu-48", stringer: { thicknessM: 0.004 } }).value;
    expect(value?.foamBy).toBe("volume");
    expect(value?.foamKg).toBeCloseTo((shape.plan.volumeM3 - 0.004 * 1.5 * 0.2) * 48, 9);
  });

  it("by the scale: foam is the weighed blank less its stringer, and the band is narrower", () => {
    const byVolume = weigh({ foam: "pu-48", stringer: { thicknessM: 0.004 } }).value;
    const byScale = weigh({ foam: "pu-48", stringer: { thicknessM: 0.004 }, shapedMassKg: 4.9 }).value;
    expect(byScale?.foamBy).toBe("scale");
    expect((byScale?.foamKg ?? 0) + (byScale?.stringerKg ?? 0)).toBeCloseTo(4.9, 12);
    const spreadKg = (plan: typeof byScale) => (plan?.finishedHighKg ?? 0) - (plan?.finishedLowKg ?? 0);
    expect(spreadKg(byScale)).toBeLessThan(spreadKg(byVolume));
  });

  it("goes by the scale even where volume says otherwise", () => {
    expect(weigh({ foam: "pu-48", shapedMassKg: 6 }).value?.foamKg).toBe(6);
  });

  it.each([
    [{ foam: "pu-48", stringer: { thicknessM: 0.004 }, shapedMassKg: 0.1 }, "blocker weight.shaped-mass"],
    [{ foam: "pu-48", shapedMassKg: Number.NaN }, "blocker weight.shaped-mass"],
    [{ foam: "pu-48", stringer: { thicknessM: 0.4 } }, "blocker weight.stringer-thickness"],
    [{ foam: "pu-48", stringer: { thicknessM: 0.004, wood: "baswood" } }, "blocker weight.unknown-wood"],
  ] satisfies Array<[BlankInput, string]>)("refuses what cannot be: %#", (blank, code) => {
    expect(weigh(blank).value).toBeNull();
    expect(codes(blank)).toEqual([code]);
  });

  it("says that it took a wood, or no stringer", () => {
    const paths = (blank: BlankInput) => weigh(blank).assumptions.map(({ path }) => path);
    expect(paths({ foam: "pu-48", stringer: { thicknessM: 0.004 } })).toContain("blank.stringer.wood");
    expect(paths({ foam: "pu-48" })).toContain("blank.stringer");
  });
});

it("refuses a blank lighter than its stringer before there is any glass", () => {
  const blank: BlankInput = { foam: "pu-48", stringer: { thicknessM: 0.004 }, shapedMassKg: 0.1 };
  expect(buildWeight({ blank }, shape, null).findings.map(({ code }) => code)).toEqual([
    "weight.shaped-mass",
  ]);
});

describe("by stage", () => {
  const fins: FittingsInput = {
    arrangement: "single",
    set: [{ fin: "centre", fromTailM: 0.2 }],
    leashPlug: {},
  };
  const stagesWith = (boxes: NonNullable<FittingsInput["boxes"]>) => {
    const boxed = buildLayup({ glass, blank: { foam: "pu-48" }, fins: { ...fins, boxes } }, shape)
      .value as LayupPlan;
    return buildWeight({ blank: { foam: "pu-48" }, fins: { boxes } }, shape, boxed).value as WeightPlan;
  };

  it.each([
    ["before-glass", ["blank", "boxes", "leash-plug", "laminate-bottom"]],
    ["after-laminate", ["blank", "laminate-bottom", "laminate-deck", "boxes", "leash-plug", "fill-bottom"]],
    ["after-fill", ["blank", "laminate-bottom", "laminate-deck", "fill-bottom", "fill-deck", "boxes"]],
  ] as const)("puts boxes where they go in: %s", (boxes, order) => {
    expect(
      stagesWith(boxes)
        .stages.map(({ id }) => id)
        .slice(0, order.length),
    ).toEqual(order);
  });

  it("ends at the finished board, band and all, whatever the order", () => {
    for (const boxes of ["before-glass", "after-laminate", "after-fill"] as const) {
      const { stages, finishedKg, finishedLowKg, finishedHighKg } = stagesWith(boxes);
      expect(stages.at(-1)?.massKg).toBeCloseTo(finishedKg, 12);
      expect(stages.at(-1)?.massLowKg).toBeCloseTo(finishedLowKg, 12);
      expect(stages.at(-1)?.massHighKg).toBeCloseTo(finishedHighKg, 12);
    }
  });
});

it("waits, with a note, for what is not planned", () => {
  const stages = [
    buildWeight({}, shape, layup),
    buildWeight({ blank: { foam: "pu-48" } }, null, null),
    buildWeight({ blank: { foam: "pu-48" } }, shape, null),
  ];
  expect(stages.map(({ value }) => value)).toEqual([null, null, null]);
  expect(stages.map(({ findings }) => findings[0]?.text)).toEqual([
    "the weight waits for the blank's foam",
    "the weight waits for the shape",
    "the weight waits for the glass",
  ]);
});
