import { describe, expect, it } from "vitest";
import { CLOTHS } from "../src/constants/cloths";
import { buildLayup } from "../src/layup/buildLayup";
import type { GlassInput } from "../src/layup/GlassInput";
import type { LayupPlan } from "../src/layup/LayupPlan";
import {
  computeFibreMassFraction,
  computeFibreVolumeFraction,
  computeLaminateDensity,
  computePlyThickness,
} from "../src/layup/mixture";
import { computeFlatFace } from "../src/layup/pattern/computeFlatFace";
import { computePattern } from "../src/layup/pattern/computePattern";
import { buildWeight } from "../src/weight/buildWeight";
import { makeBentPlank, makeHalfCylinder } from "./fixtures/analyticShape";
import bent from "./reference/layup/bentPlank.json";
import half from "./reference/layup/halfCylinder.json";
import mixture from "./reference/layup/mixture.json";
import unitWeights from "./reference/layup/unitWeights.json";

/** Each number of `expected` against the element of `list` with its id. */
function compare(
  list: readonly { readonly id: string }[],
  expected: Readonly<Record<string, Readonly<Record<string, number>>>>,
  relative: number,
): void {
  for (const [id, numbers] of Object.entries(expected)) {
    const element = list.find((candidate) => candidate.id === id) as Record<string, unknown> | undefined;
    for (const [key, truth] of Object.entries(numbers)) {
      expect(Math.abs(Number(element?.[key]) / truth - 1), `${id}.${key}`).toBeLessThanOrEqual(relative);
    }
  }
}

describe("cloth by the ounce", () => {
  it.each(unitWeights.cases)("$cloth weighs $expectedKgM2 kg/m²", ({ cloth, expectedKgM2 }) => {
    const read = CLOTHS[cloth]?.arealMassKgM2.value ?? Number.NaN;
    expect(Math.abs(read - expectedKgM2)).toBeLessThanOrEqual(unitWeights.tolerance.kgM2);
  });
});

describe("rule of mixtures", () => {
  it.each(mixture.plies)(
    "a ply of $inputs.arealMassKgM2 kg/m²: $source",
    ({ inputs, expected, tolerance, band }) => {
      const thicknessM = computePlyThickness(inputs);
      const fibreMassFraction = 1 / (1 + inputs.resinRatio);
      const fibreVolumeFraction = computeFibreVolumeFraction({ fibreMassFraction, ...inputs });
      expect(Math.abs(thicknessM - expected.thicknessM)).toBeLessThanOrEqual(tolerance.thicknessM);
      expect(Math.abs(fibreVolumeFraction - expected.fibreVolumeFraction)).toBeLessThanOrEqual(
        tolerance.fibreVolumeFraction,
      );
      // Vf = A / (ρf t), the second way to the same share.
      expect(inputs.arealMassKgM2 / (inputs.fibreDensityKgM3 * thicknessM)).toBeCloseTo(
        fibreVolumeFraction,
        12,
      );
      expect(thicknessM).toBeGreaterThan(band.thicknessM[0]!);
      expect(thicknessM).toBeLessThan(band.thicknessM[1]!);
    },
  );

  it(`${mixture.textbook.source}, ${mixture.textbook.example}`, () => {
    const { inputs, expected, tolerance } = mixture.textbook;
    const fibreMassFraction = computeFibreMassFraction(inputs);
    expect(Math.abs(computeLaminateDensity(inputs) - expected.densityKgM3)).toBeLessThanOrEqual(
      tolerance.densityKgM3,
    );
    expect(Math.abs(fibreMassFraction - expected.fibreMassFraction)).toBeLessThanOrEqual(
      tolerance.fibreMassFraction,
    );
    expect(computeFibreVolumeFraction({ ...inputs, fibreMassFraction })).toBeCloseTo(
      inputs.fibreVolumeFraction,
      12,
    );
  });
});

describe("half a cylinder in closed form", () => {
  const shape = makeHalfCylinder(half.body.lengthM, half.body.radiusM);
  const stage = buildLayup({ glass: half.glass as GlassInput, blank: half.blank }, shape);
  const layup = stage.value as LayupPlan;
  const { expected, tolerance } = half;

  it("has the faces, rail line, pieces, coats and zones worked by hand", () => {
    expect(Math.abs(layup.railLineM / expected.railLineM - 1)).toBeLessThanOrEqual(tolerance.relative);
    compare(layup.faces, expected.faces, tolerance.relative);
    compare(layup.pieces, expected.pieces, tolerance.relative);
    compare(layup.coats, expected.coats, tolerance.relative);
    compare(layup.zones, expected.zones, tolerance.relative);
  });

  it.each([
    ["bottomNoLap", "bottom", 0],
    ["deckNoLap", "deck", 0],
    ["bottomLap50", "bottom", 0.05],
  ] as const)("rolls out to the exact area and girth: %s", (key, face, lapM) => {
    const pattern = computePattern(computeFlatFace(shape, face), face, lapM);
    const truth = expected.patterns[key];
    expect(Math.abs(pattern.lengthM - truth.lengthM)).toBeLessThan(1e-6);
    expect(Math.abs(pattern.widthM - truth.widthM)).toBeLessThan(1e-6);
    expect(Math.abs(pattern.areaM2 / truth.areaM2 - 1)).toBeLessThan(tolerance.patternAreaRelative);
  });

  it("weighs by part what was worked by hand", () => {
    const weight = buildWeight({ blank: half.blank }, shape, layup).value as unknown as Record<
      string,
      number
    >;
    for (const [part, truthKg] of Object.entries(expected.weight)) {
      expect(Math.abs(weight[part]! - truthKg), part).toBeLessThanOrEqual(
        tolerance.relative * Math.max(truthKg, 1),
      );
    }
  });
});

describe("a plank bent to an arc, in closed form", () => {
  const glass: GlassInput = {
    resin: "polyester",
    bottom: { layers: ["e-136"], lapM: 0.05 },
    deck: { layers: ["e-136"], lapM: 0.05 },
    patches: [{ ...bent.patch, face: "bottom" }],
  };
  const layup = buildLayup({ glass, blank: { foam: "pu-48" } }, makeBentPlank(bent.body)).value as LayupPlan;
  const { expected, tolerance } = bent;

  it("follows the arc along faces and rails", () => {
    const numbers = { arcM: expected.arcM, areaM2: expected.faceAreaM2, girthMaxM: expected.girthMaxM };
    compare(layup.faces, { bottom: numbers, deck: numbers }, tolerance.lengthRelative);
    expect(Math.abs(layup.railLineM / expected.railLineM - 1)).toBeLessThanOrEqual(tolerance.lengthRelative);
  });

  it("gives a patch its share of the face", () => {
    compare(layup.pieces, { "patch-1": { areaM2: expected.patchAreaM2 } }, tolerance.patchRelative);
  });
});
