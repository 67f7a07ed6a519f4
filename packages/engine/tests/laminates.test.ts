import { describe, expect, it } from "vitest";
import { CLOTHS } from "../src/constants/cloths";
import { buildLayup } from "../src/layup/buildLayup";
import type { GlassInput } from "../src/layup/GlassInput";
import { computeFibreVolumeFraction } from "../src/layup/mixture";
import { computeBending } from "../src/layup/stiffness/computeBending";
import { computeWrinklingLoad } from "../src/layup/stiffness/computeFoamElasticity";
import { computePlyElasticity } from "../src/layup/stiffness/computePlyElasticity";
import {
  computeLaminateStiffness,
  computeStretchStiffness,
  type PlaneStiffness,
} from "../src/layup/stiffness/laminateStiffness";
import { measureMidSection } from "../src/layup/stiffness/measureMidSection";
import { makeHalfCylinder } from "./fixtures/analyticShape";
import laminates from "./reference/layup/laminates.json";

type Inputs = (typeof laminates.cases)[number]["inputs"];

const stiffnessOf = ({ plyM, anglesDeg, ...elasticity }: Inputs) =>
  computeLaminateStiffness(
    anglesDeg.map((deg) => ({ thicknessM: plyM, angleRad: (deg * Math.PI) / 180, elasticity })),
  );

describe("laminate stiffness", () => {
  it.each(laminates.cases)("$name: $source", ({ inputs, expected, relative }) => {
    const found = stiffnessOf(inputs);
    const truths = Object.entries(expected) as Array<["a" | "b" | "d", Partial<PlaneStiffness>]>;
    for (const [letter, terms] of truths) {
      for (const [key, truth] of Object.entries(terms)) {
        const value = found[letter][key as keyof PlaneStiffness];
        expect(Math.abs(value / truth - 1), `${letter}.${key}`).toBeLessThanOrEqual(relative);
      }
    }
  });

  it("couples nothing to bending in a laminate that is the same from both sides", () => {
    const { b } = stiffnessOf(laminates.cases[1]!.inputs);
    for (const term of Object.values(b)) expect(Math.abs(term)).toBeLessThan(1e-9 * 5.558e7);
  });

  it(laminates.strains.source, () => {
    const { a, b, d } = stiffnessOf(laminates.cases[0]!.inputs);
    const { strains, curvaturesPerM, resultantsNM, momentsN, tolerance } = laminates.strains;
    const times = (s: PlaneStiffness, [x = 0, y = 0, g = 0]: readonly number[]) => [
      s.s11 * x + s.s12 * y + s.s16 * g,
      s.s12 * x + s.s22 * y + s.s26 * g,
      s.s16 * x + s.s26 * y + s.s66 * g,
    ];
    const sum = (p: readonly number[], q: readonly number[]) => p.map((value, i) => value + q[i]!);
    const pulls = sum(times(a, strains), times(b, curvaturesPerM));
    const moments = sum(times(b, strains), times(d, curvaturesPerM));
    pulls.forEach((pull, i) => {
      expect(Math.abs(pull - resultantsNM[i]!)).toBeLessThanOrEqual(tolerance.resultantsNM);
    });
    moments.forEach((moment, i) => {
      expect(Math.abs(moment - momentsN[i]!)).toBeLessThanOrEqual(tolerance.momentsN);
    });
  });

  it("stretches an even-handed ply as its modulus says", () => {
    const elasticity = { alongPa: 14e9, acrossPa: 14e9, poisson: 0.15, shearPa: 3e9 };
    const stiffness = computeLaminateStiffness([{ thicknessM: 0.001, angleRad: 0, elasticity }]);
    expect(computeStretchStiffness(stiffness)).toBeCloseTo(14e6, 3);
  });
});

it(laminates.woven.source, () => {
  const { fibreMassFraction, expectedPa, relative } = laminates.woven;
  const fibreVolumeFraction = computeFibreVolumeFraction({
    fibreMassFraction,
    fibreDensityKgM3: 2550,
    resinDensityKgM3: 1200,
  });
  const { alongPa, acrossPa } = computePlyElasticity(CLOTHS["e-203"]!, fibreVolumeFraction);
  expect(alongPa).toBe(acrossPa);
  expect(Math.abs(alongPa / expectedPa - 1)).toBeLessThanOrEqual(relative);
});

it(laminates.wrinkling.source, () => {
  const { inputs, expectedNM, relative } = laminates.wrinkling;
  const { modulusPa, foamPa, foamShearPa, thicknessM, k } = inputs;
  const foam = { modulusPa: foamPa, shearPa: foamShearPa };
  const loadNM = computeWrinklingLoad({ modulusPa, thicknessM, foam, k });
  expect(Math.abs(loadNM / expectedNM - 1)).toBeLessThanOrEqual(relative);
});

describe("a board's section in bending", () => {
  const shape = makeHalfCylinder(1.5, laminates.beam.radiusM);
  const glass: GlassInput = {
    resin: "polyester",
    bottom: { layers: ["e-136"] },
    deck: { layers: ["e-136", "e-136"] },
  };
  const compared = buildLayup({ glass, blank: { foam: "pu-48" } }, shape).value?.compared ?? [];
  const of = (id: string) => compared.find((schedule) => schedule.id === id)!;

  it(laminates.beam.source, () => {
    const section = measureMidSection(shape);
    const foam = { modulusPa: 1e6, shearPa: 4e5 };
    const bending = computeBending({ stretchOf: () => 0, section, foam, stringerM: 0 });
    const truth = laminates.beam.shape * 1e6 * laminates.beam.radiusM ** 4;
    expect(Math.abs(bending / truth - 1)).toBeLessThanOrEqual(laminates.beam.relative);
  });

  it("sets the own schedule to one, and orders lighter below and heavier above it", () => {
    expect(of("own")).toMatchObject({ stiffnessRatio: 1, deckWrinklingRatio: 1, bottomWrinklingRatio: 1 });
    expect(of("lighter-deck").stiffnessRatio).toBeLessThan(1);
    expect(of("lighter-deck").skinMassKg).toBeLessThan(of("own").skinMassKg);
    expect(of("heavier-deck").stiffnessRatio).toBeGreaterThan(1);
    expect(of("heavier-bottom").skinMassKg).toBeGreaterThan(of("own").skinMassKg);
  });

  it("lets the wrinkling load go with the plies, and stays as it is on the other face", () => {
    // The same cloth twice or three times has one modulus, so Hoff's load goes with the thickness.
    expect(of("lighter-deck").deckWrinklingRatio).toBeCloseTo(1 / 2, 12);
    expect(of("heavier-deck").deckWrinklingRatio).toBeCloseTo(3 / 2, 12);
    expect(of("heavier-deck").bottomWrinklingRatio).toBe(1);
    expect(of("heavier-bottom").bottomWrinklingRatio).toBeCloseTo(6 / 4, 12);
  });

  it("gains little from stronger glass of the same weight: its share of stiffness, resin kept", () => {
    expect(of("stronger-glass").stiffnessRatio).toBeGreaterThan(1.05);
    expect(of("stronger-glass").stiffnessRatio).toBeLessThan(86 / 70);
  });

  it("compares nothing where nothing is laid", () => {
    const bare: GlassInput = { resin: "polyester", bottom: { layers: [] }, deck: { layers: [] } };
    expect(buildLayup({ glass: bare, blank: { foam: "pu-48" } }, shape).value?.compared).toEqual([]);
  });
});
