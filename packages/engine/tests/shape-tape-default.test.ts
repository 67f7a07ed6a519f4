import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { ARC_WAYS, ARCS, surveyArc } from "./fixtures/arcBoard";
import { makeBoard } from "./fixtures/surveyTruth";

const { tolerance, cases } = ARCS;

describe.each(cases)(
  "$name (reference/shape/arc.json), the tape's uncertainty left at its default",
  (arc) => {
    const { lengthM, rockerRadiusM } = arc.inputs;

    it.each(ARC_WAYS)("length by $lengthBy, stations by $stationsBy from the $from", (way) => {
      const survey = surveyArc({ lengthM, rockerRadiusM }, arc.expected.lengthTapeM, way);
      const plan = planBuild(makeBoard(survey));
      expect(plan.findings.filter(({ code }) => code.startsWith("survey.")).map(({ text }) => text)).toEqual(
        [],
      );
      const shape = plan.shape!;
      expect(Math.abs(shape.lengthM - lengthM)).toBeLessThanOrEqual(tolerance.lengthM);
      expect(Math.abs(shape.lengthTapeM - arc.expected.lengthTapeM)).toBeLessThanOrEqual(tolerance.lengthM);
    });
  },
);
