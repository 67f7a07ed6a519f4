import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTHS } from "../../src/constants/cloths";
import { buildLayup } from "../../src/layup/buildLayup";
import type { FittingsInput } from "../../src/layup/FittingsInput";
import type { GlassInput } from "../../src/layup/GlassInput";
import { buildMix } from "../../src/mix/buildMix";
import { makeLensBoard } from "../fixtures/analyticShape";
import { kelvin } from "../fixtures/mixLayup";

const SEED = { seed: 20260502, numRuns: 200 };
const WITHIN_KG = 1e-4;

const cloth = fc.constantFrom(...Object.keys(CLOTHS));
const face = fc.record({
  layers: fc.array(cloth, { maxLength: 4 }),
  lapM: fc.double({ min: 0, max: 0.1, noNaN: true }),
});
const glasses: fc.Arbitrary<GlassInput> = fc.record({
  resin: fc.constantFrom("polyester", "epoxy"),
  resinRatio: fc.double({ min: 0.4, max: 2, noNaN: true }),
  seal: fc.boolean(),
  lapKind: fc.constantFrom("free" as const, "cut" as const),
  cutting: fc.constantFrom("rolled" as const, "pattern" as const),
  bottom: face,
  deck: face,
  finish: fc.constantFrom("sanded" as const, "wet-sanded" as const, "gloss" as const),
  tint: fc.record(
    {
      laminate: fc.double({ min: 0, max: 0.1, noNaN: true }),
      fill: fc.double({ min: 0, max: 0.1, noNaN: true }),
    },
    { requiredKeys: [] },
  ),
});
const FITTINGS = {
  arrangement: "tri",
  boxes: "after-fill",
  set: [
    { fin: "front", fromTailM: 0.28, fromRailM: 0.03, box: { lengthM: 0.11, widthM: 0.02, depthM: 0.018 } },
    { fin: "centre", fromTailM: 0.09 },
  ],
  leashPlug: {},
} satisfies FittingsInput;
const boards = fc.record({
  lengthM: fc.double({ min: 1.4, max: 3.6, noNaN: true }),
  halfWidthM: fc.double({ min: 0.2, max: 0.32, noNaN: true }),
  glass: glasses,
  fins: fc.constantFrom(undefined, FITTINGS),
  airK: fc.double({ min: kelvin(12), max: kelvin(32), noNaN: true }),
  people: fc.integer({ min: 1, max: 3 }),
  experience: fc.constantFrom("first" as const, "some" as const, "trade" as const),
});

describe("resin by coat and cups of any board", () => {
  it("are the same mass to a tenth of a gram, and hardener with base, tint apart, makes the cup", () => {
    let held = 0;
    const seen = new Set<string>();
    fc.assert(
      fc.property(boards, ({ lengthM, halfWidthM, glass, fins, airK, people, experience }) => {
        const areaM2 = (Math.PI / 2) * lengthM * halfWidthM;
        const size = { lengthM, halfWidthM, thicknessM: 0.06, thinning: 0.4, apex: 0.42 };
        const shape = makeLensBoard({ ...size, deckAreaM2: areaM2, bottomAreaM2: areaM2 });
        const layup = buildLayup({ glass, blank: { foam: "pu-48" }, fins }, shape).value;
        if (layup === null) throw new Error("no lay-up");
        const shop = { temperature: { dayK: airK, nightK: airK - 2 }, people, experience };
        const mix = buildMix({ shop, glass }, layup).value;
        if (mix === null) throw new Error("no mix");
        expect(mix.coats.map(({ id }) => id)).toEqual(layup.coats.map(({ id }) => id));
        for (const coat of layup.coats) {
          const cups = mix.coats.find(({ id }) => id === coat.id)!.cups;
          if (cups.length === 0) continue;
          held++;
          seen.add(`${coat.id} ${cups.length > 1 ? "many" : "one"}`);
          const mixedKg = cups.reduce((sum, cup) => sum + cup.mixedMassKg, 0);
          expect(Math.abs(mixedKg - coat.resinMassKg), coat.id).toBeLessThan(WITHIN_KG);
          const partsKg = cups.reduce((sum, cup) => sum + cup.baseMassKg + cup.hardenerMassKg, 0);
          expect(Math.abs(partsKg - mixedKg), coat.id).toBeLessThan(WITHIN_KG);
        }
      }),
      SEED,
    );
    expect(held).toBeGreaterThan(500);
    for (const coat of [
      "laminate-bottom many",
      "laminate-deck many",
      "fill-deck one",
      "boxes one",
      "leash-plug one",
    ])
      expect(seen).toContain(coat);
  });
});
