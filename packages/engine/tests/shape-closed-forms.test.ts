import { describe, expect, it } from "vitest";
import { planBuild } from "../src/index";
import { largest, outlineErrors } from "./fixtures/planOutline";
import { outlineOf, type ReferenceBoard, readReference, surveyReference } from "./fixtures/referenceShape";
import { evenPlaces, makeBoard, recommendedPlaces } from "./fixtures/surveyTruth";

interface Reference {
  readonly tolerance: {
    readonly outlineM: number;
    readonly endM: number;
    readonly planAreaRelative: number;
    readonly volumeRelative: number;
  };
  readonly cases: ReadonlyArray<{
    readonly name: string;
    readonly inputs: ReferenceBoard;
    readonly expected: { readonly planAreaM2: number; readonly volumeM3: number };
  }>;
}

const { tolerance, cases } = readReference<Reference>("closedForms");

const PLACES = [
  { places: "at 3, 6, 12, 24 in from each end and the middle", listPlaces: recommendedPlaces },
  { places: "at tenths of the length", listPlaces: evenPlaces },
];

describe.each(PLACES)(
  "outlines in closed form, read exactly $places (reference/shape/closedForms.json)",
  ({ listPlaces }) => {
    it.each(cases)("$name", ({ inputs, expected }) => {
      const plan = planBuild(makeBoard(surveyReference(inputs, listPlaces(inputs.lengthM))));
      const shape = plan.shape!;
      const truth = outlineOf(inputs);
      expect(shape.lengthM).toBeCloseTo(inputs.lengthM, 12);
      expect(largest(outlineErrors(shape.outline, truth, [0.05, 0.95], 401))).toBeLessThanOrEqual(
        tolerance.outlineM,
      );
      expect(largest(outlineErrors(shape.outline, truth, [0, 0.05], 401))).toBeLessThanOrEqual(
        tolerance.endM,
      );
      expect(largest(outlineErrors(shape.outline, truth, [0.95, 1], 401))).toBeLessThanOrEqual(
        tolerance.endM,
      );
      expect(Math.abs(shape.planAreaM2 / expected.planAreaM2 - 1)).toBeLessThanOrEqual(
        tolerance.planAreaRelative,
      );
      expect(Math.abs(shape.volumeM3 / expected.volumeM3 - 1)).toBeLessThanOrEqual(tolerance.volumeRelative);
    });

    it.each(cases)("$name: no reading is called suspect", ({ inputs }) => {
      const shape = planBuild(makeBoard(surveyReference(inputs, listPlaces(inputs.lengthM)))).shape!;
      expect(shape.readings.length).toBeGreaterThanOrEqual(27);
      expect(shape.readings.filter(({ suspect }) => suspect)).toEqual([]);
    });
  },
);

it("gives Wigley's waterplane the area coefficient 2/3 (ship hydrodynamics, from memory)", () => {
  const wigley = cases.find(({ name }) => name.includes("Wigley"))!;
  const shape = planBuild(makeBoard(surveyReference(wigley.inputs))).shape!;
  const coefficient = shape.planAreaM2 / (shape.lengthM * shape.widthMaxM);
  expect(Math.abs(coefficient / (2 / 3) - 1)).toBeLessThanOrEqual(tolerance.planAreaRelative);
  expect(Math.abs(shape.widthMaxM - 2 * wigley.inputs.halfWidthM)).toBeLessThanOrEqual(
    2 * tolerance.outlineM,
  );
});
