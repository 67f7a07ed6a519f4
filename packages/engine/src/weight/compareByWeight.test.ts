import { expect, it } from "vitest";
import { buildShape } from "../shape/buildShape";
import { buildSurvey } from "../survey/buildSurvey";
import type { SurveyInput } from "../survey/SurveyInput";
import { compareByWeight } from "./compareByWeight";

/** An ellipse of 1.8 m by 0.5 m, 60 mm thick everywhere. */
const survey = (deckFullness: number): SurveyInput => ({
  lengthM: 1.8,
  lengthBy: "straight",
  stationsBy: "straight",
  nose: { kind: "round" },
  tail: { kind: "round" },
  sections: [{ apex: 0.5, deckFullness, bottomFullness: 2 }],
  stations: [0.1, 0.25, 0.5, 0.9, 1.3, 1.55, 1.7].map((fromTailM) => {
    const half = 0.25 * Math.sqrt(1 - (fromTailM / 0.9 - 1) ** 2);
    return { fromTailM, leftM: half, rightM: half, thicknessM: 0.06, rockerM: 0 };
  }),
});
const shape = (deckFullness: number) => buildShape(buildSurvey(survey(deckFullness)).value).value;

it("finds the fullness of the board that the scale stands for", () => {
  // The blank is weighed as if its deck had a fullness of 2.8: 48 kg/m³ times that board's own volume.
  const massKg = 48 * (shape(2.8)?.plan.volumeM3 ?? 0);
  const { value, findings } = compareByWeight({ blank: { foam: "pu-48", shapedMassKg: massKg } }, shape(2));
  expect(value?.deckFullness).toBeCloseTo(2.8, 6);
  expect(value?.volumeM3).toBeCloseTo(massKg / 48, 9);
  expect(findings.map((f) => f.code)).toEqual(["weight.by-scale"]);
});

it("says so where no fullness would do, and nothing where nothing was weighed", () => {
  const heavy = compareByWeight({ blank: { foam: "pu-48", shapedMassKg: 9 } }, shape(2));
  expect(heavy.value?.deckFullness).toBeNull();
  expect(heavy.findings.map((f) => f.severity)).toEqual(["warning"]);
  expect(compareByWeight({ blank: { foam: "pu-48" } }, shape(2))).toEqual({
    value: null,
    findings: [],
    assumptions: [],
  });
});
