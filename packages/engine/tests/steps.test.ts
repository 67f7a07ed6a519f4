import { describe, expect, it } from "vitest";
import type { BoxTiming } from "../src/finset/FinsInput";
import type { Finish } from "../src/layup/GlassInput";
import { buildSteps } from "../src/steps/buildSteps";
import type { StepsInput } from "../src/steps/StepsInput";
import { makeLayup } from "./fixtures/mixLayup";
import order from "./reference/steps/order.json";
import trade from "./reference/steps/trade.json";

interface Case {
  readonly foam: string;
  readonly finish: string;
  readonly boxes: string | null;
  readonly plug: boolean;
}

function boardOf({ foam, finish, boxes, plug }: Case): StepsInput {
  const leashPlug = plug ? { leashPlug: { fromTailM: 0.08, fromCentrelineM: 0.02 } } : {};
  const fins = {
    arrangement: "tri",
    set: [],
    boxes: (boxes ?? "after-fill") as BoxTiming,
    ...leashPlug,
  } as const;
  return {
    survey: { lengthM: 1.83 },
    blank: { foam },
    glass: { resin: foam.startsWith("pu") ? "polyester" : "epoxy", finish: finish as Finish },
    ...(boxes === null ? {} : { fins }),
  };
}

describe("the order of work", () => {
  it.each(order.cases)("$name", (one) => {
    expect(
      buildSteps(boardOf(one), { finset: null, layup: null, mix: null }).value?.map(({ id }) => id),
    ).toEqual(one.expected);
  });
});

describe("facts of the trade", () => {
  it.each(trade.sanding)("$fact", ({ experience, expectedH, toleranceH }) => {
    const shop = { experience: experience as "first" | "trade" };
    const board = { ...boardOf(order.cases[0]!), shop };
    const steps = buildSteps(board, { finset: null, layup: makeLayup("polyester"), mix: null }).value ?? [];
    const sandingS = steps
      .filter(({ id }) => id === "sand-bottom" || id === "sand-deck")
      .reduce((sum, { handsOnS }) => sum + handsOnS, 0);
    expect(Math.abs(sandingS / 3600 - expectedH)).toBeLessThanOrEqual(toleranceH);
  });
});
