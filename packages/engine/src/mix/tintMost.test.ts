import { describe, expect, it } from "vitest";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { buildMix } from "./buildMix";

const shop = { temperature: { dayK: kelvin(20), nightK: kelvin(18) } };

const found = (laminate: number) =>
  buildMix({ shop, glass: { tint: { laminate } } }, makeLayup("epoxy"))
    .findings.filter(({ code }) => code === "mix.much-tint")
    .map(({ severity, path }) => `${severity} ${path}`);

/** Common practice, no source: pastes and dyes up to some hundredths of the resin. */
describe("much tint", () => {
  it("is a warning for each coat that it is in, and for no other", () => {
    expect(found(0.08)).toEqual([
      "warning mix.coats[laminate-bottom].masterBatch",
      "warning mix.coats[laminate-deck].masterBatch",
    ]);
  });

  it("is none up to the limit, the limit with it", () => {
    expect(found(0.05)).toEqual([]);
    expect(found(0.02)).toEqual([]);
  });
});
