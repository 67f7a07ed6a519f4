import { describe, expect, it } from "vitest";
import { markDone } from "./markDone";

describe("a step marked done on the page", () => {
  it("is an entry with its time, and a weighing beside it where the board was on the scale", () => {
    expect(markDone([], { step: "fill-deck", at: "2026-04-12T11:40", mass: "2.4 kg" })).toEqual([
      { id: "r1", kind: "done", step: "fill-deck", at: "2026-04-12T11:40" },
      { id: "r2", kind: "weighed", after: "fill-deck", mass: "2.4 kg", at: "2026-04-12T11:40" },
    ]);
  });

  it("corrects the mark that stands, and leaves it where it is", () => {
    const first = markDone([], { step: "prep", at: "2026-04-11T09:50", mass: null });
    const second = markDone(first, { step: "prep", at: "2026-04-11T10:50", mass: null });
    expect(second).toEqual([
      { id: "r1", kind: "done", step: "prep", at: "2026-04-11T09:50" },
      { id: "r2", kind: "done", step: "prep", at: "2026-04-11T10:50", corrects: "r1" },
    ]);
    expect(markDone(second, { step: "prep", at: "", mass: null }).at(-1)).toEqual({
      id: "r3",
      kind: "done",
      step: "prep",
      corrects: "r2",
    });
  });
});
