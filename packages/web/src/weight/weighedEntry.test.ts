import { describe, expect, test } from "vitest";
import { nextWeighing, standingWeighings, weighedEntry } from "./weighedEntry";

const AT = "2026-04-11T12:00";
const first = { id: "r2", kind: "weighed", after: "laminate-bottom", mass: "2.1 kg" } as const;
const done = { id: "r3", kind: "done", step: "laminate-deck" } as const;

describe("a weighing for the record", () => {
  test("has an id of its own, and its time", () => {
    const entry = weighedEntry([first], { after: "laminate-deck", mass: "2.6 kg", at: AT });
    expect(entry).toEqual({ id: "r3", kind: "weighed", after: "laminate-deck", mass: "2.6 kg", at: AT });
    expect(weighedEntry([done, first], { after: "laminate-deck", mass: "2.6 kg", at: AT }).id).toBe("r4");
  });

  test("corrects the one that stands after the same step, however often", () => {
    const second = weighedEntry([first], { after: "laminate-bottom", mass: "2.2 kg", at: AT });
    expect(second.corrects).toBe("r2");
    const record = [first, second];
    expect(weighedEntry(record, { after: "laminate-bottom", mass: "2.3 kg", at: AT }).corrects).toBe(
      second.id,
    );
    expect(standingWeighings(record)).toEqual([second]);
  });
});

describe("what is weighed next", () => {
  const stages = ["blank", "laminate-bottom", "laminate-deck", "fill-bottom"];
  test("the coat just done, or else the first that was not weighed", () => {
    expect(nextWeighing([], stages)).toBe("blank");
    expect(nextWeighing([first, done], stages)).toBe("laminate-deck");
    const deck = { id: "r4", kind: "weighed", after: "laminate-deck", mass: "2.6 kg" } as const;
    expect(nextWeighing([first, done, deck], stages.slice(1))).toBe("fill-bottom");
  });
});
