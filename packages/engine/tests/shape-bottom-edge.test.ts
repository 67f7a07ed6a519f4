import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import type { SurveyInput } from "../src/survey/SurveyInput";
import { halfWidthAt, largest, outlineErrors } from "./fixtures/planOutline";
import { outlineOf, readReference } from "./fixtures/referenceShape";
import { makeBoard } from "./fixtures/surveyTruth";

interface Case {
  readonly name: string;
  readonly inputs: Readonly<
    Record<"lengthM" | "halfWidthM" | "apex" | "bottomFullness" | "thicknessM" | "concaveM", number>
  >;
  readonly stations: ReadonlyArray<
    Readonly<Record<"fromTailM" | "apexHalfWidthM" | "edgeHalfWidthM", number>>
  >;
}

interface Reference {
  readonly tolerance: { readonly outlineM: number; readonly readingM: number };
  readonly cases: readonly Case[];
}

const { tolerance, cases } = readReference<Reference>("bottomEdge");

describe("half-widths read at the bottom's edge (reference/shape/bottomEdge.json)", () => {
  it.each(cases)("$name: carried out to the rail's widest line at each station", ({ inputs, stations }) => {
    const { outline } = planBuild(makeBoard(surveyEdge({ inputs, stations }))).shape!;
    for (const { fromTailM, apexHalfWidthM } of stations) {
      for (const key of ["leftM", "rightM"] as const) {
        expect(
          Math.abs(halfWidthAt(outline, key, fromTailM) - apexHalfWidthM),
          `at ${fromTailM}`,
        ).toBeLessThanOrEqual(tolerance.readingM);
      }
    }
  });

  it.each(cases)("$name: the outline between the stations", ({ inputs, stations }) => {
    const { outline } = planBuild(makeBoard(surveyEdge({ inputs, stations }))).shape!;
    const truth = outlineOf({
      ...inputs,
      outline: { family: "lame", exponent: 2 },
      nose: "round",
      tail: { kind: "round" },
      thickness: { mostM: inputs.thicknessM, lost: 0 },
    });
    expect(largest(outlineErrors(outline, truth, [0.05, 0.95], 401))).toBeLessThanOrEqual(tolerance.outlineM);
  });
});

function surveyEdge({ inputs, stations }: Pick<Case, "inputs" | "stations">): SurveyInput {
  const { lengthM, apex, bottomFullness, thicknessM, concaveM } = inputs;
  return {
    lengthM,
    lengthBy: "straight",
    stationsBy: "straight",
    halfWidthsAt: "bottom-edge",
    nose: { kind: "round" },
    tail: { kind: "round" },
    stations: stations.map(({ fromTailM, edgeHalfWidthM }) => ({
      fromTailM,
      leftM: edgeHalfWidthM,
      rightM: edgeHalfWidthM,
      thicknessM,
    })),
    sections: [{ apex, deckFullness: 2.5, bottomFullness }],
    ...(concaveM > 0 && { bottoms: [{ kind: "concave" as const, depthM: concaveM }] }),
  };
}
