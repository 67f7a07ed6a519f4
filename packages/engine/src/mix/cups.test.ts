import { describe, expect, it } from "vitest";
import { kelvin, makeCoat, makeLayup } from "../../tests/fixtures/mixLayup";
import { buildMix } from "./buildMix";
import { placeCups } from "./placeCups";

const shop = { temperature: { dayK: kelvin(24), nightK: kelvin(24) } };
const RECTANGLE = [
  { fromTailM: 0, leftM: 0.25, rightM: 0.25 },
  { fromTailM: 1.8, leftM: 0.25, rightM: 0.25 },
];

describe("the order of cups on the board", () => {
  it("is from nose to tail in equal shares of the face", () => {
    expect(placeCups(RECTANGLE, 3).map(({ fromTailM }) => fromTailM)).toEqual([
      expect.closeTo(1.2, 9),
      expect.closeTo(0.6, 9),
      expect.closeTo(0, 9),
    ]);
    // A triangle whose tip is the nose: half its area lies beyond 1 - 1/√2 of its length, closed form.
    const fine = Array.from({ length: 1001 }, (_, i) => {
      const half = 0.25 * (1 - i / 1000);
      return { fromTailM: (1.8 * i) / 1000, leftM: half, rightM: half };
    });
    const [nose, tail] = placeCups(fine, 2);
    expect(nose!.fromTailM).toBeCloseTo(1.8 * (1 - Math.SQRT1_2), 3);
    expect(nose!.fromTailM).toBe(tail!.toM);
    expect(placeCups([], 2)).toEqual([]);
  });

  it("stands with every cup of a laminate, and with no batch that is poured at once", () => {
    const { value } = buildMix({ shop }, makeLayup("polyester"), { outline: RECTANGLE });
    for (const { id, cups } of value!.coats) {
      if (cups.length === 1) expect([cups[0]!.fromTailM, cups[0]!.toM]).toEqual([null, null]);
      else
        expect(
          cups.every((cup) => cup.fromTailM! < cup.toM!),
          id,
        ).toBe(true);
    }
    expect(value!.coats.some(({ cups }) => cups.length > 1)).toBe(true);
  });
});

describe("colour and drops", () => {
  const { value, findings } = buildMix(
    { shop: { ...shop, dropsPerMl: 24 }, glass: { tint: { laminate: 0.02 } } },
    makeLayup("polyester"),
  );
  const deck = value!.coats.find(({ id }) => id === "laminate-deck")!;

  it("colour all cups of a coat from one master batch", () => {
    const base = deck.cups.reduce((sum, cup) => sum + cup.baseMassKg, 0);
    expect(deck.masterBatch!.baseMassKg).toBeCloseTo(base, 12);
    expect(deck.masterBatch!.tintMassKg).toBeCloseTo(0.02 * base, 12);
    expect(deck.cups.every((cup) => cup.tintMassKg === deck.cups[0]!.tintMassKg)).toBe(true);
    expect(findings.map(({ code }) => code)).toContain("mix.master-batch");
    // What is weighed out of the master batch uses it up, tint and all.
    const poured = deck.cups.reduce((sum, cup) => sum + cup.tintedBaseKg!, 0);
    expect(poured).toBeCloseTo(1.02 * base, 12);
    const fill = value!.coats.find(({ id }) => id === "fill-deck")!;
    expect(fill.masterBatch).toBeNull();
    expect(fill.cups.every((cup) => cup.tintedBaseKg === null)).toBe(true);
  });

  it("count drops by the builder's own bottle, and not without", () => {
    const [cup] = deck.cups;
    expect(cup!.hardenerDrops).toBeCloseTo(24 * cup!.hardenerVolumeM3 * 1e6, 9);
    const plain = buildMix({ shop }, makeLayup("polyester")).value!.coats[0]!;
    expect(plain.cups[0]!.hardenerDrops).toBeNull();
  });
});

describe("what would fit", () => {
  it("is a narrower band, where at its middle the batch would lie spread in time", () => {
    const layup = { ...makeLayup("polyester"), coats: [makeCoat("fill-deck", "fill", "polyester", 0.45)] };
    const wayAt = (celsius: number) =>
      buildMix(
        { shop: { temperature: { dayK: kelvin(celsius), nightK: kelvin(celsius) } } },
        layup,
      ).findings.find(({ code }) => code === "mix.no-dose")?.text;
    expect(wayAt(30)).toContain("timed in this shop");
    expect(wayAt(45)).not.toContain("timed in this shop");
  });
});

describe("a refused laminate", () => {
  it("is told by the smallest cup, not by the whole coat", () => {
    const layup = {
      ...makeLayup("polyester"),
      coats: [makeCoat("laminate-deck", "laminate", "polyester", 0.75)],
    };
    const hot = { temperature: { dayK: kelvin(45), nightK: kelvin(45) } };
    const refused = buildMix({ shop: hot }, layup).findings.find(({ code }) => code === "mix.no-dose");
    expect(refused?.text).toContain("even a cup of 50.0 g");
  });
});
