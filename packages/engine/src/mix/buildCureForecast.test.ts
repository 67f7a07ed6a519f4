import { describe, expect, it } from "vitest";
import { kelvin, makeLayup } from "../../tests/fixtures/mixLayup";
import { buildCureForecast } from "./buildCureForecast";
import { buildMix } from "./buildMix";

const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;
const layup = makeLayup("polyester");
const forecast = (dayC: number, nightC: number) => {
  const shop = {
    temperature: { dayK: kelvin(dayC), nightK: kelvin(nightC) },
    start: "2026-04-11T11:00",
    hours: { from: "09:00", to: "18:00" },
  };
  const mix = buildMix({ shop }, layup).value!;
  return { mix, made: buildCureForecast({ shop }, layup, mix)! };
};

describe("a coat begun at another time", () => {
  it("has the plan's own clock when it is begun at the start of work, and the same each morning", () => {
    const { mix, made } = forecast(18, 10);
    for (const coat of mix.coats) {
      const { potGelS, potGelLowS, potGelHighS, spreadByS, ...film } = coat.clock!;
      expect(made.clockOf(coat.id, 0)).toEqual(film);
      const nextDay = made.clockOf(coat.id, DAY_S)!;
      expect(nextDay.sandableS).toBeCloseTo(film.sandableS!, 3);
    }
  });

  it("is later by the cold night where it is begun in the evening, in even air never", () => {
    const evening = 8 * HOUR_S;
    const cold = forecast(18, 10).made;
    expect(cold.clockOf("fill-deck", evening)!.flipS).toBeGreaterThan(cold.clockOf("fill-deck", 0)!.flipS!);
    const even = forecast(18, 18).made;
    expect(even.clockOf("fill-deck", evening)!.flipS).toBeCloseTo(even.clockOf("fill-deck", 0)!.flipS!, 3);
  });

  it("waits for the morning where it is begun in a night too cold, and says that it is", () => {
    const { made } = forecast(18, 10);
    const midnight = 15 * HOUR_S;
    expect(made.isWarmEnough("fill-deck", HOUR_S)).toBe(true);
    expect(made.isWarmEnough("fill-deck", midnight)).toBe(false);
    const waits = made.clockOf("fill-deck", midnight)!.flipS! - made.clockOf("fill-deck", DAY_S)!.flipS!;
    expect(waits / HOUR_S).toBeCloseTo(9, 6);
  });

  it("counts from the hours of the day that the shop begins on", () => {
    expect(forecast(18, 10).made.zeroWallS).toBe(Date.UTC(2026, 3, 11, 9) / 1000);
  });

  it("says nothing of a coat that is not there, nor beyond what is known of the air", () => {
    const { made } = forecast(18, 10);
    expect(made.clockOf("gloss-deck", 0)).toBeNull();
    expect(made.airK(1000 * DAY_S)).toBeNull();
  });
});
