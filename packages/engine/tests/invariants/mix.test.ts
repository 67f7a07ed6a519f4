import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EPOXY, POLYESTER } from "../../src/constants/resins";
import type { Experience, SpreadKind } from "../../src/constants/workTimes";
import { buildMix } from "../../src/mix/buildMix";
import { type CupTask, computeCupSplit } from "../../src/mix/computeCupSplit";
import { computeDose } from "../../src/mix/computeDose";
import { computeSpreadS } from "../../src/mix/computeSpreadS";
import { fitGelModel } from "../../src/mix/fitGelModel";
import { computeSpreadByS, gelLowS } from "../../src/mix/GelModel";
import type { MixEntry } from "../../src/mix/MixEntry";
import type { ClockPlan } from "../../src/mix/MixPlan";
import { kelvin, makeLayup } from "../fixtures/mixLayup";

const SEED = 20260411;
const MODELS = { peroxide: fitGelModel(POLYESTER), "two-part": fitGelModel(EPOXY) };
const kinds = fc.constantFrom<SpreadKind>("seal", "laminate", "fill", "gloss", "box", "repair");
const crews = fc.record({
  people: fc.integer({ min: 1, max: 4 }),
  experience: fc.constantFrom<Experience>("first", "some", "trade"),
});

const tasks: fc.Arbitrary<CupTask> = fc
  .record({
    kind: kinds,
    massKg: fc.double({ min: 0.01, max: 3, noNaN: true }),
    resin: fc.constantFrom(POLYESTER, EPOXY),
    temperatureK: fc.double({ min: kelvin(5), max: kelvin(45), noNaN: true }),
    crew: crews,
  })
  .map((task) => ({ ...task, model: MODELS[task.resin.kind] }));

describe("over 10,000 random shops", () => {
  it("the dose never leaves the resin's range, cups sum to the coat, and each is spread before its early gel", () => {
    let refused = 0;
    fc.assert(
      fc.property(tasks, (task) => {
        const split = computeCupSplit(task);
        if (split === null) {
          refused++;
          return;
        }
        const { resin, model, temperatureK } = task;
        if (resin.kind === "peroxide") {
          expect(split.ratio).toBeGreaterThanOrEqual(resin.dose.least);
          expect(split.ratio).toBeLessThanOrEqual(resin.dose.most);
        }
        if (resin.kind === "two-part") expect(split.ratio).toBe(resin.ratio.value);
        expect(Math.abs(split.count * split.massKg - task.massKg)).toBeLessThan(1e-4);
        const lowS = gelLowS(model!, { temperatureK, massKg: split.massKg, dose: split.ratio });
        expect(split.spreadS).toBeLessThanOrEqual(lowS);
        if (task.kind !== "laminate") expect(split.count).toBe(1);
      }),
      { seed: SEED, numRuns: 10_000 },
    );
    expect(refused).toBeGreaterThan(100);
    expect(refused).toBeLessThan(9_000);
  });

  it("no stronger dose would leave the time, and where none is given not even the least does", () => {
    const poured = tasks.filter(({ resin, kind }) => resin.kind === "peroxide" && kind !== "laminate");
    fc.assert(
      fc.property(poured, fc.double({ min: 1e-6, max: 1, noNaN: true }), (task, share) => {
        const { least, most } = POLYESTER.dose;
        const split = computeCupSplit(task);
        const { temperatureK, massKg, crew, kind } = task;
        const wantedS = computeSpreadS(kind, massKg, crew);
        const strongest = computeDose(POLYESTER.dose, task.model!, { temperatureK, massKg, wantedS });
        expect(strongest === null).toBe(split === null);
        // What is weighed out is the printed figure: at most that far from the strongest.
        if (split !== null && strongest !== null)
          expect(Math.abs(split.ratio - strongest)).toBeLessThanOrEqual(
            0.0005 / massKg / 4 + 0.03 * strongest,
          );
        const from = strongest ?? least;
        const dose = from + share * (most - from);
        const isStronger = dose > from + 2e-6 * (most - least);
        const lowS = (at: number) => computeSpreadByS(task.model!, { temperatureK, massKg, dose: at });
        if (split === null) expect(lowS(least)).toBeLessThan(wantedS);
        else if (isStronger) expect(lowS(dose)).toBeLessThan(wantedS);
      }),
      { seed: SEED, numRuns: 2_000 },
    );
  });
});

const shops = fc.record(
  {
    temperature: fc
      .tuple(fc.double({ min: 5, max: 38, noNaN: true }), fc.double({ min: 0, max: 15, noNaN: true }))
      .map(([day, drop]) => ({ dayK: kelvin(day), nightK: kelvin(day - drop) })),
    humidity: fc.double({ min: 0.05, max: 1, noNaN: true }),
    resinTemperatureK: fc.double({ min: kelvin(8), max: kelvin(35), noNaN: true }),
    hours: fc.constantFrom(
      { from: "09:00", to: "18:00" },
      { from: "06:00", to: "22:00" },
      { from: "18:00", to: "21:30" },
    ),
    people: fc.integer({ min: 1, max: 3 }),
    experience: fc.constantFrom<Experience>("first", "some", "trade"),
  },
  { requiredKeys: [] },
);
const sheets = fc
  .array(
    fc.record({
      temperatureK: fc.double({ min: kelvin(10), max: kelvin(30), noNaN: true }),
      dose: fc.double({ min: 0.008, max: 0.03, noNaN: true }),
      gelS: fc.double({ min: 300, max: 10_000, noNaN: true }),
    }),
    { minLength: 1, maxLength: 8 },
  )
  .map((gel) => ({ kind: "peroxide", dose: { least: 0.01, most: 0.025 }, gel }) as const);

describe("any sheet that a builder may type in", () => {
  it("gives doses inside its range and cups that lie spread in time, or none, and never a number that is none", () => {
    const layup = makeLayup("mine");
    fc.assert(
      fc.property(shops, sheets, (shop, mine) => {
        const { value } = buildMix({ shop, materials: { resins: { mine } } }, layup);
        for (const { hardenerRatio, clock, cups } of value?.coats ?? []) {
          if (hardenerRatio === null) {
            expect(cups).toEqual([]);
            continue;
          }
          expect(hardenerRatio).toBeGreaterThanOrEqual(0.01);
          expect(hardenerRatio).toBeLessThanOrEqual(0.025);
          for (const cup of cups) expect(cup.spreadS).toBeLessThanOrEqual(clock!.spreadByS);
          checkClock(clock!);
        }
        // JSON knows no NaN and no infinity: they would come back as null.
        expect(JSON.parse(JSON.stringify(value))).toEqual(value);
      }),
      { seed: SEED, numRuns: 250 },
    );
  });
});

describe("any record of cups and fingertips", () => {
  const minutes = fc.integer({ min: 1, max: 3000 });
  const wall = (minute: number) => new Date(Date.UTC(2026, 3, 11, 9, minute)).toISOString().slice(0, 16);
  const touches = fc.array(
    fc.record({ minute: minutes, feels: fc.constantFrom("wet", "strings", "leathery", "hard") }),
    { maxLength: 4 },
  );

  it("keeps every band about its number, however odd the fingertips", () => {
    const layup = makeLayup("polyester");
    fc.assert(
      fc.property(shops, touches, fc.double({ min: 0.002, max: 0.02, noNaN: true }), (shop, felt, kg) => {
        const coat = "laminate-deck";
        const record: readonly MixEntry[] = [
          { id: "m", kind: "mixed", coat, baseKg: 0.4, hardenerKg: kg, at: wall(0) },
          ...felt.map(({ minute, feels }, i) => ({
            id: `t${i}`,
            kind: "touched" as const,
            coat,
            feels,
            at: wall(minute),
          })),
        ];
        const { value } = buildMix({ shop, record }, layup);
        for (const { clock, paceRatio } of value?.coats ?? []) {
          if (clock !== null) checkClock(clock);
          if (paceRatio !== null) expect(paceRatio).toBeGreaterThan(0);
        }
        expect(JSON.parse(JSON.stringify(value))).toEqual(value);
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

const ORDER: ReadonlyArray<keyof ClockPlan> = ["potGelLowS", "potGelS", "potGelHighS"];
const BANDED = [
  "pullTape",
  "trimFrom",
  "trimUntil",
  "flip",
  "recoatFrom",
  "recoatUntil",
  "sandable",
  "full",
] as const;

describe("a whole mix in random shops", () => {
  it("weighs up to the gram, and every band holds its number", () => {
    fc.assert(
      fc.property(shops, fc.constantFrom("polyester", "epoxy"), (given, resin) => {
        const layup = makeLayup(resin);
        const { value } = buildMix({ shop: given }, layup);
        for (const coat of value?.coats ?? []) {
          const wanted = layup.coats.find(({ id }) => id === coat.id)!.resinMassKg;
          const mixed = coat.cups.reduce((sum, cup) => sum + cup.mixedMassKg, 0);
          if (coat.hardenerRatio !== null) expect(Math.abs(mixed - wanted)).toBeLessThan(1e-4);
          for (const cup of coat.cups) {
            expect(cup.baseMassKg + cup.hardenerMassKg).toBeCloseTo(cup.mixedMassKg, 12);
            expect(cup.hardenerMassKg / cup.baseMassKg).toBeCloseTo(coat.hardenerRatio!, 12);
          }
          if (coat.clock !== null) checkClock(coat.clock);
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  it("is never slower on a warmer night", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 16, max: 24, noNaN: true }),
        fc.double({ min: 1, max: 12, noNaN: true }),
        (day, drop) => {
          const full = (nightK: number) =>
            buildMix({ shop: { temperature: { dayK: kelvin(day), nightK } } }, makeLayup("polyester")).value
              ?.coats[0]?.clock?.fullS;
          const [warm, cold] = [full(kelvin(day)), full(kelvin(day - drop))];
          if (warm !== undefined && warm !== null)
            expect(warm).toBeLessThanOrEqual(cold ?? Number.POSITIVE_INFINITY);
        },
      ),
      { seed: SEED, numRuns: 100 },
    );
  });
});

function checkClock(clock: ClockPlan): void {
  const pot = ORDER.map((key) => clock[key]!);
  expect(pot).toEqual([...pot].sort((a, b) => a - b));
  expect(clock.potGelLowS).toBeLessThanOrEqual(0.8 * clock.potGelS + 1e-9);
  expect(clock.spreadByS).toBeLessThan(clock.potGelLowS);
  for (const name of BANDED) {
    const [low, middle, high] = [clock[`${name}LowS`], clock[`${name}S`], clock[`${name}HighS`]];
    const orEver = (timeS: number | null) => timeS ?? Number.POSITIVE_INFINITY;
    if (low === null && middle === null) continue;
    expect(orEver(low)).toBeLessThanOrEqual(orEver(middle));
    expect(orEver(middle)).toBeLessThanOrEqual(orEver(high));
  }
}
