import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTHS } from "../../src/constants/cloths";
import { WOODS } from "../../src/constants/woods";
import { buildLayup } from "../../src/layup/buildLayup";
import type { FittingsInput } from "../../src/layup/FittingsInput";
import type { BlankInput, GlassInput } from "../../src/layup/GlassInput";
import type { LayupPlan } from "../../src/layup/LayupPlan";
import { layupWorking } from "../../src/layup/layupWorking";
import { buildWeight } from "../../src/weight/buildWeight";
import type { WeightPlan } from "../../src/weight/WeightPlan";
import { weightWorking } from "../../src/weight/weightWorking";
import { makeHalfCylinder, makeLensBoard } from "../fixtures/analyticShape";

const SEED = { seed: 20260411, numRuns: 150 };

const shapes = fc.oneof(
  fc
    .record({
      lengthM: fc.double({ min: 1.4, max: 3.2, noNaN: true }),
      halfWidthM: fc.double({ min: 0.2, max: 0.32, noNaN: true }),
      thicknessM: fc.double({ min: 0.04, max: 0.1, noNaN: true }),
      thinning: fc.double({ min: 0, max: 0.8, noNaN: true }),
      apex: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
    })
    .map((size) => {
      // Not the true surface, only of its size: conservation must hold whatever area the shape reports.
      const areaM2 = (Math.PI / 2) * size.lengthM * size.halfWidthM * 1.03;
      return makeLensBoard({ ...size, deckAreaM2: areaM2, bottomAreaM2: 0.99 * areaM2 });
    }),
  fc
    .tuple(fc.double({ min: 1.4, max: 3.2, noNaN: true }), fc.double({ min: 0.15, max: 0.3, noNaN: true }))
    .map(([lengthM, radiusM]) => makeHalfCylinder(lengthM, radiusM)),
);

const cloth = fc.constantFrom(...Object.keys(CLOTHS));
const layers = fc.record(
  {
    layers: fc.array(cloth, { maxLength: 4 }),
    lapM: fc.double({ min: 0, max: 0.1, noNaN: true }),
  },
  { requiredKeys: ["layers"] },
);
const patch = fc
  .record(
    {
      face: fc.constantFrom("deck" as const, "bottom" as const),
      cloth,
      fromTailM: fc.double({ min: 0, max: 0.6, noNaN: true }),
      longM: fc.double({ min: 0.05, max: 0.7, noNaN: true }),
      widthM: fc.double({ min: 0.02, max: 0.8, noNaN: true }),
    },
    { requiredKeys: ["face", "cloth", "fromTailM", "longM"] },
  )
  .map(({ longM, ...rest }) => ({ ...rest, toM: rest.fromTailM + longM }));

const glasses: fc.Arbitrary<GlassInput> = fc.record(
  {
    resin: fc.constant("epoxy"),
    resinRatio: fc.double({ min: 0.4, max: 2, noNaN: true }),
    seal: fc.boolean(),
    lapKind: fc.constantFrom("free" as const, "cut" as const),
    bottom: layers,
    deck: layers,
    patches: fc.array(patch, { maxLength: 4 }),
    finish: fc.constantFrom("sanded" as const, "wet-sanded" as const, "gloss" as const),
  },
  { requiredKeys: ["resin"] },
);
const blanks: fc.Arbitrary<BlankInput> = fc.record(
  {
    foam: fc.constantFrom("pu-40", "pu-48", "eps-16", "eps-24", "xps-32"),
    stringer: fc.record({
      thicknessM: fc.double({ min: 0.002, max: 0.01, noNaN: true }),
      wood: fc.constantFrom(...Object.keys(WOODS)),
    }),
  },
  { requiredKeys: ["foam"] },
);
const finsets: fc.Arbitrary<FittingsInput | undefined> = fc.constantFrom(undefined, {
  arrangement: "tri",
  boxes: "after-fill",
  set: [
    { fin: "front", fromTailM: 0.28, fromRailM: 0.03, box: { lengthM: 0.11, widthM: 0.02, depthM: 0.018 } },
    { fin: "centre", fromTailM: 0.09 },
  ],
  leashPlug: {},
} satisfies FittingsInput);

const boards = fc.record({ shape: shapes, glass: glasses, blank: blanks, fins: finsets });

function build(board: {
  shape: ReturnType<typeof makeHalfCylinder>;
  glass: GlassInput;
  blank: BlankInput;
  fins: FittingsInput | undefined;
}) {
  const layup = buildLayup({ glass: board.glass, blank: board.blank, fins: board.fins }, board.shape);
  const weight = buildWeight(board, board.shape, layup.value);
  expect(layup.findings.filter(({ severity }) => severity === "blocker")).toEqual([]);
  return { layup: layup.value as LayupPlan, weight: weight.value as WeightPlan };
}

/** Every number of a plan with its path, elements by id. */
function listNumbers(value: unknown, path: string): Array<{ path: string; value: number }> {
  if (typeof value === "number") return [{ path, value }];
  if (Array.isArray(value)) return value.flatMap((item, i) => listNumbers(item, `${path}[${item.id ?? i}]`));
  if (value === null || typeof value !== "object") return [];
  return Object.entries(value).flatMap(([key, item]) => listNumbers(item, `${path}.${key}`));
}

describe("layup and weight of any sensible board", () => {
  it("has no number that is not finite, none below nought, and every band around its value", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { layup, weight } = build(board);
        const numbers = [...listNumbers(layup, "layup"), ...listNumbers(weight, "weight")];
        const byPath = new Map(numbers.map(({ path, value }) => [path, value]));
        const faults = numbers.filter(({ path, value }) => {
          const low = byPath.get(path.replace(/(Kg|M|M3)$/, "Low$1")) ?? value;
          const high = byPath.get(path.replace(/(Kg|M|M3)$/, "High$1")) ?? value;
          // A place on a flat piece may lie behind the tail or to the right.
          const least = /\.(to)?(along|across)M$/i.test(path) ? Number.NEGATIVE_INFINITY : 0;
          return !(Number.isFinite(value) && value >= least && low <= value && value <= high);
        });
        expect(faults).toEqual([]);
      }),
      SEED,
    );
  });

  it("conserves mass: pieces = areal mass × area, coats = their terms, weight = its parts", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { layup, weight } = build(board);
        for (const piece of layup.pieces) {
          const expectedKg = CLOTHS[piece.cloth]!.arealMassKgM2.value * piece.areaM2;
          expect(piece.clothMassKg).toBeCloseTo(expectedKg, 12);
          expect(piece.resinMassKg).toBeCloseTo(layup.resinRatio * expectedKg, 12);
        }
        for (const coat of layup.coats) {
          const sumKg = coat.terms.reduce((total, { massKg }) => total + massKg, 0);
          expect(coat.resinMassKg).toBeCloseTo(sumKg, 12);
          expect(coat.keptMassKg).toBeLessThan(coat.resinMassKg);
        }
        const { foamKg, stringerKg, clothKg, resinKg, fittingsKg } = weight;
        expect(weight.finishedKg).toBeCloseTo(foamKg + stringerKg + clothKg + resinKg + fittingsKg, 12);
        expect(clothKg).toBeCloseTo(
          layup.pieces.reduce((total, { clothMassKg }) => total + clothMassKg, 0),
          12,
        );
        expect(resinKg).toBeCloseTo(
          layup.coats.reduce((total, { keptMassKg }) => total + keptMassKg, 0),
          12,
        );
      }),
      SEED,
    );
  });

  it("puts the glass of the pieces into the laminates, gram for gram", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { layup } = build(board);
        const inGlassKg = layup.coats
          .flatMap(({ terms }) => terms)
          .filter(({ id }) => id === "in-glass" || id === "in-laps")
          .reduce((total, { massKg }) => total + massKg, 0);
        const heldKg = layup.pieces.reduce((total, { resinMassKg }) => total + resinMassKg, 0);
        expect(inGlassKg).toBeCloseTo(heldKg, 12);
      }),
      SEED,
    );
  });

  it("leaves its inputs as they were and gives the same plan twice", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const before = JSON.stringify([board.glass, board.blank, board.fins]);
        const first = JSON.stringify(build(board));
        expect(JSON.stringify(build(board))).toBe(first);
        expect(JSON.stringify([board.glass, board.blank, board.fins])).toBe(before);
      }),
      { ...SEED, numRuns: 25 },
    );
  });

  it("can say how each of its numbers came about", () => {
    fc.assert(
      fc.property(boards, (board) => {
        const { layup, weight } = build(board);
        const context = {
          plan: { layup, weight, shape: board.shape.plan },
          board: { glass: board.glass, blank: board.blank, ...(board.fins ? { fins: board.fins } : {}) },
        };
        const table = { ...layupWorking, ...weightWorking };
        const faults: string[] = [];
        for (const { path } of [...listNumbers(layup, "layup"), ...listNumbers(weight, "weight")]) {
          const ids = [...path.matchAll(/\[([^\]]*)\]/g)].map((match) => match[1]!);
          const working = table[path.replace(/\[[^\]]*\]/g, "[]")];
          const inputs = working?.inputs(context, ids) ?? [];
          const isShown = inputs.every(
            ({ name, value }) =>
              name !== "" &&
              (typeof value === "string" || !("dimension" in value) || Number.isFinite(value.value)),
          );
          if (inputs.length === 0 || !isShown) faults.push(path);
        }
        expect(faults).toEqual([]);
      }),
      { ...SEED, numRuns: 40 },
    );
  });
});
