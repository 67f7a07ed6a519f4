import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { CLOTHS } from "../../src/constants/cloths";
import { buildLayup } from "../../src/layup/buildLayup";
import type { LayupInput } from "../../src/layup/LayupInput";
import { buildLadder } from "../../src/sanding/buildLadder";
import { buildSanding } from "../../src/sanding/buildSanding";
import type { SandingBoard, SandingEntry } from "../../src/sanding/SandingBoard";
import { makeLensBoard } from "../fixtures/analyticShape";

const SEED = { seed: 20260416, numRuns: 120 };

const cloth = fc.constantFrom(...Object.keys(CLOTHS));
const boards = fc.record({
  lengthM: fc.double({ min: 1.5, max: 3, noNaN: true }),
  halfWidthM: fc.double({ min: 0.2, max: 0.32, noNaN: true }),
  deck: fc.array(cloth, { minLength: 1, maxLength: 3 }),
  bottom: fc.array(cloth, { minLength: 1, maxLength: 2 }),
  finish: fc.constantFrom("sanded" as const, "wet-sanded" as const, "gloss" as const),
  experience: fc.constantFrom("first" as const, "some" as const, "trade" as const),
});

function sand(
  {
    lengthM,
    halfWidthM,
    deck,
    bottom,
    finish,
    experience,
  }: typeof boards extends fc.Arbitrary<infer T> ? T : never,
  record: readonly SandingEntry[] = [],
) {
  const areaM2 = (Math.PI / 2) * lengthM * halfWidthM;
  const size = { lengthM, halfWidthM, thicknessM: 0.06, thinning: 0.5, apex: 0.4 };
  const shape = makeLensBoard({ ...size, deckAreaM2: areaM2, bottomAreaM2: areaM2 });
  const board: SandingBoard & LayupInput = {
    glass: { resin: "polyester", deck: { layers: deck }, bottom: { layers: bottom }, finish },
    blank: { foam: "pu-48" },
    shop: { experience },
    record,
  };
  const layup = buildLayup(board, shape).value;
  const ladder = buildLadder(board, layup).value;
  const stage = buildSanding(board, { shape, layup, ladder, weighed: [] });
  if (stage.value === null) throw new Error("the film budget must be built");
  return { ...stage, value: stage.value };
}

describe("the film budget of any board", () => {
  it("adds up: the papers' takings are what is taken, film less taken is what remains", () => {
    fc.assert(
      fc.property(boards, (one) => {
        for (const zone of sand(one).value.zones) {
          const sumM = zone.ledger.reduce((takenM, line) => takenM + line.takenM, 0);
          expect(sumM).toBeCloseTo(zone.takenM, 12);
          expect(zone.filmM - zone.takenM).toBeCloseTo(zone.remainingM, 12);
          expect(zone.ledger.at(-1)?.leftM).toBeCloseTo(zone.remainingM, 12);
          expect(zone.remainingLowM).toBeLessThanOrEqual(zone.remainingM);
          expect(zone.remainingHighM).toBeGreaterThanOrEqual(zone.remainingM);
          expect(zone.leastM).toBeLessThanOrEqual(zone.remainingM + 1e-15);
        }
      }),
      SEED,
    );
  });

  it("has the ladder take out less with each finer paper of a coat, and leave finer scratches", () => {
    fc.assert(
      fc.property(boards, (one) => {
        const { grits } = sand(one).value;
        grits.slice(1).forEach((grit, i) => {
          const before = grits[i]!;
          expect(grit.grainM).toBeLessThan(before.grainM);
          expect(grit.scratchM).toBeLessThan(before.scratchM);
          if (grit.on === before.on) expect(grit.removesM).toBeLessThan(before.removesM);
          if (grit.on === before.on) expect(grit.removesM).toBeCloseTo(before.scratchM, 15);
        });
      }),
      SEED,
    );
  });

  it("takes more the less practised the hand is, at every zone", () => {
    fc.assert(
      fc.property(boards, (one) => {
        const [trade, some, first] = (["trade", "some", "first"] as const).map(
          (experience) => sand({ ...one, experience }).value.zones,
        );
        trade!.forEach((zone, i) => {
          expect(zone.takenM).toBeLessThan(some![i]!.takenM);
          expect(some![i]!.takenM).toBeLessThan(first![i]!.takenM);
        });
      }),
      SEED,
    );
  });

  it("ranks each zone once, and none behind one that goes through less often", () => {
    fc.assert(
      fc.property(boards, (one) => {
        const { zones } = sand(one).value;
        const order = zones.toSorted((a, b) => a.rank - b.rank);
        expect(order.map(({ rank }) => rank)).toEqual(zones.map((_, i) => i + 1));
        order.slice(1).forEach((zone, i) => {
          expect(zone.throughShare).toBeLessThanOrEqual(order[i]!.throughShare);
        });
      }),
      SEED,
    );
  });
});

describe("a reading in place of the model", () => {
  it("of the gauge is what is left after its paper, whatever the model had", () => {
    fc.assert(
      fc.property(boards, fc.double({ min: 0, max: 3e-4, noNaN: true }), (one, filmM) => {
        const entry = { id: "r1", kind: "film", zone: "deck", filmM, after: "P120" } as const;
        const deck = sand(one, [entry]).value.zones.find(({ id }) => id === "deck")!;
        expect(deck.filmBy).toBe("gauge");
        expect(deck.ledger.find(({ grit }) => grit === "P120")?.leftM).toBeCloseTo(filmM, 12);
      }),
      SEED,
    );
  });

  it("of twice the dust takes twice as much off that face, and none off the other", () => {
    fc.assert(
      fc.property(boards, fc.double({ min: 0.01, max: 0.1, noNaN: true }), (one, massKg) => {
        const dust = (kg: number) => [
          { id: "r1", kind: "dust", face: "deck", massKg: kg, after: "P180" } as const,
        ];
        const taken = (zones: ReturnType<typeof sand>["value"]["zones"], id: string) =>
          zones.find((zone) => zone.id === id)!.takenM;
        const [once, twice, none] = [dust(massKg), dust(2 * massKg), []].map(
          (record) => sand(one, record).value.zones,
        );
        expect(taken(twice!, "deck") / taken(once!, "deck")).toBeCloseTo(2, 9);
        expect(taken(twice!, "bottom")).toBeCloseTo(taken(none!, "bottom"), 12);
      }),
      SEED,
    );
  });

  it.each([
    [
      "a film thinner than nought",
      { id: "r1", kind: "film", zone: "deck", filmM: -1e-5 },
      "blocker sanding.film",
    ],
    ["no film at all", { id: "r1", kind: "film", zone: "deck", filmM: Number.NaN }, "blocker sanding.film"],
    [
      "a zone that is not there",
      { id: "r1", kind: "film", zone: "fin", filmM: 1e-4 },
      "warning sanding.unknown-zone",
    ],
    [
      "a paper not on the ladder",
      { id: "r1", kind: "film", zone: "deck", filmM: 1e-4, after: "P36" },
      "warning sanding.unknown-grit",
    ],
    [
      "dust of nothing",
      { id: "r1", kind: "dust", face: "deck", massKg: 0, after: "P120" },
      "blocker sanding.dust",
    ],
  ] as const)("is refused and left out where it names %s", (_, entry, code) => {
    const one = { lengthM: 1.8, halfWidthM: 0.25, deck: ["e-136"], bottom: ["e-136"] };
    const like = { ...one, finish: "sanded", experience: "first" } as const;
    const read = sand(like, [entry]);
    expect(read.findings.map((found) => `${found.severity} ${found.code}`)).toContain(code);
    expect(read.value.zones).toEqual(sand(like).value.zones);
  });

  it("gives way to the entry that corrects it", () => {
    const like = {
      lengthM: 1.8,
      halfWidthM: 0.25,
      deck: ["e-136"],
      bottom: ["e-136"],
      finish: "sanded",
      experience: "first",
    } as const;
    const wrong = { id: "r1", kind: "film", zone: "deck", filmM: 9e-4 } as const;
    const right = { id: "r2", kind: "film", zone: "deck", filmM: 9e-5, corrects: "r1" } as const;
    const deck = sand({ ...like, deck: [...like.deck], bottom: [...like.bottom] }, [wrong, right]).value
      .zones[0]!;
    expect(deck.filmM).toBeCloseTo(9e-5, 12);
  });
});
