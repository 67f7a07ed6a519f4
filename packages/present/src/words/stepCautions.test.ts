import { describe, expect, test } from "vitest";
import { stepCautions } from "./stepCautions";

const step = (id: string, cautions: readonly string[], done = false) => ({
  id,
  title: id,
  after: [],
  needs: [],
  because: "",
  coat: null,
  cures: null,
  handsOnS: 0,
  waitS: null,
  noLoadS: null,
  materials: [],
  tools: [],
  cautions,
  done,
  doneAt: null,
});
const SHEET = "The sheet comes first.";
const DUST = "Dust harms: wear a filter.";

describe("stepCautions", () => {
  test("says what holds for all once, each other in full where it first matters, and by its harm from then on", () => {
    const cautions = stepCautions(
      [step("prep", [SHEET]), step("sand", [SHEET, DUST]), step("sand-deck", [SHEET, DUST])],
      { units: "mm", language: "en" },
    );
    expect(cautions.always).toEqual([SHEET]);
    expect(cautions.steps).toEqual([
      { full: [], again: [] },
      { full: [DUST], again: [] },
      { full: [], again: [{ harm: "Dust harms", step: 2, caution: DUST }] },
    ]);
  });

  test("a step that is done does not hold the full words of a later one", () => {
    const cautions = stepCautions(
      [step("sand", [DUST, SHEET], true), step("sand-deck", [DUST]), step("wait", [])],
      { units: "mm", language: "en" },
    );
    expect(cautions.steps[0]).toEqual({ full: [], again: [] });
    expect(cautions.steps[1]?.full).toEqual([DUST]);
  });

  test("a single step keeps its own words", () => {
    expect(stepCautions([step("sand", [DUST])], { units: "mm", language: "en" })).toEqual({
      always: [],
      steps: [{ full: [DUST], again: [] }],
    });
  });
});
