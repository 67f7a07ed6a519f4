import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { type ReferenceBoard, readReference, surveyReference } from "./fixtures/referenceShape";
import { makeBoard } from "./fixtures/surveyTruth";

interface Reference {
  readonly tolerance: {
    readonly volumeRelative: number;
    readonly planAreaRelative: number;
    readonly skinRelative: number;
    readonly endAreaRelative: number;
  };
  readonly cases: ReadonlyArray<{
    readonly name: string;
    readonly inputs: ReferenceBoard;
    readonly expected: Readonly<
      Record<"volumeM3" | "planAreaM2" | "deckAreaM2" | "bottomAreaM2" | "endAreaM2", number>
    >;
  }>;
}

describe.each(["sections", "tails"])("boards by brute-force quadrature (reference/shape/%s.json)", (file) => {
  const { tolerance, cases } = readReference<Reference>(file);

  it.each(cases)("$name", ({ inputs, expected }) => {
    const shape = planBuild(makeBoard(surveyReference(inputs))).shape!;
    const off = (key: keyof typeof expected) => Math.abs(shape[key] / expected[key] - 1);
    expect(off("volumeM3"), "volume").toBeLessThanOrEqual(tolerance.volumeRelative);
    expect(off("planAreaM2"), "plan area").toBeLessThanOrEqual(tolerance.planAreaRelative);
    expect(off("deckAreaM2"), "deck").toBeLessThanOrEqual(tolerance.skinRelative);
    expect(off("bottomAreaM2"), "bottom").toBeLessThanOrEqual(tolerance.skinRelative);
  });

  it.each(cases)("$name: the end, or the walls of a swallow's notch", ({ inputs, expected }) => {
    const { endAreaM2 } = planBuild(makeBoard(surveyReference(inputs))).shape!;
    expect(Math.abs(endAreaM2 - expected.endAreaM2)).toBeLessThanOrEqual(
      1e-9 + tolerance.endAreaRelative * expected.endAreaM2,
    );
  });
});
