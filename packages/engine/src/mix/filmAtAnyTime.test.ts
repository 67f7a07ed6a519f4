import { describe, expect, it } from "vitest";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { POLYESTER } from "../constants/resins";
import { buildMix } from "./buildMix";
import { buildShopAir } from "./buildShopAir";
import { computeFilmClock } from "./computeFilmClock";
import { makeResinCure } from "./ResinCure";

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;
const layup = makeLayup("polyester");

/** The plan of a shop, and its films begun at any other time with the plan's own cups. */
function shopAt(dayC: number, nightC: number) {
  const shop = {
    temperature: { dayK: kelvin(dayC), nightK: kelvin(nightC) },
    hours: { from: "09:00", to: "18:00" },
  };
  const mix = buildMix({ shop }, layup).value!;
  const { model, curve } = makeResinCure(POLYESTER, buildShopAir(shop).value!);
  const clockOf = (id: string, beginsS: number) => {
    const coat = mix.coats.find((each) => each.id === id)!;
    const firstCupEarlierS = coat.cups.at(-1)!.mixAtS;
    return computeFilmClock({
      kind: layup.coats.find((each) => each.id === id)!.kind,
      resin: POLYESTER,
      model: model!,
      curve: curve!,
      dose: coat.hardenerRatio!,
      startS: beginsS + firstCupEarlierS,
      firstCupEarlierS,
    });
  };
  return { mix, clockOf };
}

describe("a coat begun at another time", () => {
  it("has the plan's own clock when it is begun at the start of work, and the same each morning", () => {
    const { mix, clockOf } = shopAt(18, 10);
    for (const coat of mix.coats) {
      const { potGelS, potGelLowS, potGelHighS, spreadByS, ...film } = coat.clock!;
      expect(clockOf(coat.id, 0)).toEqual(film);
      expect(clockOf(coat.id, DAY_S).sandableS).toBeCloseTo(film.sandableS!, 3);
    }
  });

  it("is later by the cold night where it is begun in the evening, in even air never", () => {
    const evening = 8 * HOUR_S;
    const cold = shopAt(18, 10);
    expect(cold.clockOf("fill-deck", evening).flipS).toBeGreaterThan(cold.clockOf("fill-deck", 0).flipS!);
    const even = shopAt(18, 18);
    expect(even.clockOf("fill-deck", evening).flipS).toBeCloseTo(even.clockOf("fill-deck", 0).flipS!, 3);
  });

  it("waits for the morning where it is begun in a night too cold", () => {
    const { clockOf } = shopAt(18, 10);
    const waits = clockOf("fill-deck", 15 * HOUR_S).flipS! - clockOf("fill-deck", DAY_S).flipS!;
    expect(waits / HOUR_S).toBeCloseTo(9, 6);
  });
});
