import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { ARC_WAYS, ARCS, chordSag, profileAt, surveyArc } from "./fixtures/arcBoard";
import { makeBoard } from "./fixtures/surveyTruth";

const { tolerance, cases } = ARCS;

describe.each(cases)("$name (reference/shape/arc.json)", ({ inputs, expected }) => {
  it.each(ARC_WAYS)("length by $lengthBy, stations by $stationsBy from the $from", (way) => {
    const shape = planBuild(makeBoard(surveyArc(inputs, expected.lengthTapeM, way))).shape!;
    expect(Math.abs(shape.lengthM - inputs.lengthM)).toBeLessThanOrEqual(tolerance.lengthM);
    expect(Math.abs(shape.lengthTapeM - expected.lengthTapeM)).toBeLessThanOrEqual(tolerance.lengthM);
    for (const row of expected.profile) {
      const found = profileAt(shape.profile, row.fromTailM);
      expect(
        Math.abs(found.fromTailTapeM - row.fromTailTapeM),
        `tape at ${row.fromTailM}`,
      ).toBeLessThanOrEqual(tolerance.placeM);
      expect(Math.abs(found.rockerM - row.rockerM), `rocker at ${row.fromTailM}`).toBeLessThanOrEqual(
        tolerance.placeM + chordSag(shape.profile, row.fromTailM, inputs.rockerRadiusM),
      );
    }
  });
});
