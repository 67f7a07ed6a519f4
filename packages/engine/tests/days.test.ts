import { describe, expect, it } from "vitest";
import type { Board } from "../src/Board";
import { planDays } from "../src/planDays";
import { kelvin, makeLayup } from "./fixtures/mixLayup";

/** Straight lines between readings of one day, 09:00 to 18:00. */
const AIR = [
  ["09:00", 11],
  ["12:00", 17],
  ["18:00", 24],
] as const;

const HOUR_OF = (wall: string) => Number(wall.slice(11, 13)) + Number(wall.slice(14, 16)) / 60;

function airAt(wall: string): number {
  const hour = HOUR_OF(wall);
  return hour < 12 ? 11 + 2 * (hour - 9) : 17 + (7 / 6) * (hour - 12);
}

function daysBoard(celsius: ReadonlyArray<readonly [string, number]>): Board {
  return {
    name: "cold morning",
    survey: { lengthM: 1.83, stations: [], nose: { kind: "pointed" }, tail: { kind: "pin" } },
    glass: { resin: "polyester" },
    shop: {
      temperature: celsius.map(([clock, c]) => ({ at: `2026-04-11T${clock}`, airK: kelvin(c) })),
      start: "2026-04-11T09:00",
      hours: { from: "09:00", to: "18:00" },
    },
  };
}

function daysOf(celsius: ReadonlyArray<readonly [string, number]>) {
  return planDays(daysBoard(celsius), {
    shape: null,
    finset: null,
    layup: makeLayup("polyester"),
    ladder: null,
  });
}

describe("a shop whose air jumps so that dose and day never agree", () => {
  // A stronger dose for cool air lets the next coat go on the same day, in warm air, whose weaker dose puts it on the next, cool, morning.
  const LEAPING_C = [28, 20, 15, 27, 25, 22, 17, 29, 30, 22, 16, 29, 27, 19, 21, 30];
  const board: Board = {
    name: "leaping air",
    survey: { lengthM: 1.83, stations: [], nose: { kind: "pointed" }, tail: { kind: "pin" } },
    glass: { resin: "polyester" },
    shop: {
      temperature: LEAPING_C.map((c, i) => ({
        at: `2026-04-${11 + Math.floor(i / 4)}T${String((i % 4) * 6).padStart(2, "0")}:00`,
        airK: kelvin(c),
      })),
      start: "2026-04-11T09:00",
      hours: { from: "09:00", to: "18:00" },
    },
  };
  const { mix, calendar } = planDays(board, {
    shape: null,
    finset: null,
    layup: makeLayup("polyester"),
    ladder: null,
  });

  it("is told for which hour the coat is dosed and when the days have it, and both are there", () => {
    const told = calendar.findings.filter(({ code }) => code === "calendar.dose-hour");
    expect(told.map(({ severity, path }) => `${severity} ${path}`)).toEqual(["warning calendar[fill-deck]"]);
    const laid = calendar.value!.find(({ step }) => step === "fill-deck")!;
    expect(told[0]?.text).toContain(`the days put it at ${laid.startsAt}`);
    const [, dosedAt = ""] = /for the air of (\S+),/.exec(told[0]?.text ?? "") ?? [];
    expect(dosedAt).not.toBe(laid.startsAt);
    expect(mix.value!.coats.find(({ id }) => id === "fill-deck")!.hardenerRatio).toBeGreaterThan(0);
  });
});

describe("a shop that warms through the day", () => {
  const { mix, calendar } = daysOf(AIR);
  const laid = calendar.value!.find(({ step }) => step === "laminate-bottom")!;
  const coat = mix.value!.coats.find(({ id }) => id === "laminate-bottom")!;

  it("gets no resin before the air is at the sheet's 15 °C", () => {
    // The list is cut into even half hours at their middle; half of one at 2 K an hour is half a kelvin.
    expect(airAt(laid.startsAt!)).toBeGreaterThanOrEqual(15 - 0.51);
    expect(HOUR_OF(laid.startsAt!)).toBeGreaterThanOrEqual(10.75);
    expect(laid.because.cause).toBe("warmth");
  });

  it("has each coat dosed for the air of the hour at which the calendar puts it", () => {
    expect(Math.abs(coat.temperatureK - kelvin(airAt(laid.startsAt!)))).toBeLessThan(0.51);
    expect(coat.hardenerRatio!).toBeGreaterThanOrEqual(0.01);
    expect(calendar.findings.map(({ code }) => code)).not.toContain("calendar.dose-hour");
  });

  it("has one clock: the mix's trim is the calendar's, which counts from the hands' going off", () => {
    const trim = laid.moments.find(({ kind }) => kind === "trim")!;
    const lastCupS = coat.cups.at(-1)!.mixAtS;
    const trimHour = HOUR_OF(laid.startsAt!) + (lastCupS + coat.clock!.trimFromS!) / 3600;
    expect(Math.abs(HOUR_OF(trim.at) - trimHour)).toBeLessThan(0.75);
  });

  it("is refused where the hours stay cold, and the days end with a word", () => {
    const cold = daysOf([
      ["09:00", 9],
      ["18:00", 14],
    ]);
    expect(cold.mix.findings.find(({ code }) => code === "mix.too-cold")?.severity).toBe("blocker");
  });

  it("ends the days with a word where the air is warm only before the foam is ready", () => {
    const short = daysOf([
      ["09:00", 18],
      ["09:30", 18],
      ["09:31", 9],
      ["18:00", 9],
    ]);
    expect(short.calendar.findings.map(({ code }) => code)).toContain("calendar.too-cold");
  });
});

describe("the cups", () => {
  const STEADY_AIR = [
    ["09:00", 20],
    ["18:00", 20],
  ] as const;

  it("stand in the order in which the steps mix them, however the coats were listed", () => {
    const layup = makeLayup("polyester");
    const { mix, steps } = planDays(daysBoard(STEADY_AIR), {
      shape: null,
      finset: null,
      layup: { ...layup, coats: [...layup.coats].reverse() },
      ladder: null,
    });
    const mixed = steps.value!.flatMap(({ coat }) => (coat === null ? [] : [coat]));
    expect(mixed.length).toBeGreaterThan(3);
    expect(mix.value!.coats.slice(0, mixed.length).map(({ id }) => id)).toEqual(mixed);
  });
});
