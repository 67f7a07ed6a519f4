import { describe, expect, it } from "vitest";
import { makeShopBoard } from "../../tests/fixtures/calendarShops";
import { kelvin } from "../../tests/fixtures/mixLayup";
import { listNumericPaths } from "../../tests/fixtures/numericLeaves";
import type { RecordEntry } from "../steps/RecordEntry";
import type { StepsInput } from "../steps/StepsInput";
import { buildCalendar } from "./buildCalendar";
import type { CalendarEntry } from "./CalendarPlan";
import { calendarWorking } from "./calendarWorking";

const SHOP = {
  temperature: { dayK: kelvin(18), nightK: kelvin(18) },
  hours: { from: "09:00", to: "18:00" },
  start: "2026-03-28T09:00",
};

/** A six-foot board in polyester, as the defaults take it. */
function build(shop: Partial<NonNullable<StepsInput["shop"]>> = {}, record: readonly RecordEntry[] = []) {
  const { board, parts } = makeShopBoard(
    {
      survey: { lengthM: 1.83 },
      blank: { foam: "pu-48" },
      glass: { resin: "polyester" },
      fins: { arrangement: "tri", set: [], leashPlug: { fromTailM: 0.08, fromCentrelineM: 0.02 } },
      shop: { ...SHOP, ...shop },
      record,
    },
    "polyester",
  );
  const stage = buildCalendar(board, parts);
  const find = (step: string): CalendarEntry => stage.value!.find((entry) => entry.step === step)!;
  return { ...stage, find, board };
}

describe("coats that are all too old to bond", () => {
  const late = () =>
    build({ hours: { from: "09:00", to: "10:40" }, temperature: { dayK: kelvin(30), nightK: kelvin(30) } });

  it("are one finding from three on, with every coat and all the time that it costs", () => {
    const { findings, value } = late();
    const old = value!.filter(({ sandFirstS }) => sandFirstS > 0);
    expect(old.length).toBeGreaterThanOrEqual(3);
    const told = findings.filter(({ code }) => code === "calendar.sand-first");
    expect(told).toHaveLength(1);
    for (const { step } of old) expect(told[0]?.text).toContain(step);
    expect(told[0]?.text).toMatch(/^\d coats begin when .* 1 h( \d+ min)? in all|in all are planned/);
  });
});

const hoursBetween = (a: string, b: string) => (Date.parse(`${b}Z`) - Date.parse(`${a}Z`)) / 3_600_000;
const done = (step: string, at?: string): RecordEntry => ({
  id: `d-${step}`,
  kind: "done",
  step,
  ...(at === undefined ? {} : { at }),
});

describe("facts of the trade (common practice, no source), from the default plan of a six-foot board", () => {
  const { find, value } = build();

  it("a laminate is flipped after a few hours", () => {
    for (const step of ["laminate-bottom", "laminate-deck"]) {
      const flip = find(step).moments.find(({ kind }) => kind === "flip")!;
      const hours = hoursBetween(find(step).endsAt!, flip.at);
      expect(hours).toBeGreaterThan(1);
      expect(hours).toBeLessThan(8);
    }
  });

  it("boxes are left 12 to 72 hours before they are sanded", () => {
    const hours = hoursBetween(find("boxes").endsAt!, find("sand-bottom").startsAt!);
    expect(hours).toBeGreaterThanOrEqual(12);
    expect(hours).toBeLessThanOrEqual(72);
  });

  it("stands in order of time, and ends with the first surf", () => {
    const starts = value!.map(({ startsAt }) => startsAt!);
    expect(starts).toEqual(starts.toSorted());
    expect(value!.at(-1)?.step).toBe("water");
  });
});

describe("the record", () => {
  it("a step that slipped moves what follows, and is not moved itself", () => {
    const slipped = build({}, [done("prep", "2026-03-30T15:00")]);
    expect(slipped.find("prep")).toMatchObject({ done: true, endsAt: "2026-03-30T15:00", slackS: null });
    expect(slipped.find("water").endsAt! > build().find("water").endsAt!).toBe(true);
    for (const entry of slipped.value!)
      expect(entry.done || entry.startsAt! >= "2026-03-30T15:00").toBe(true);
  });

  it("a board that lay for a year goes on from there, on warm days or a list's last one", () => {
    const later = build({}, [done("prep", "2027-04-02T10:00")]);
    expect(later.find("water").endsAt! > "2027-04-03").toBe(true);
    const earlier = build({}, [done("prep", "2025-04-02T10:00")]);
    expect(earlier.find("water").endsAt! > "2026-03-29").toBe(true);
    const temperature = ["2026-03-27T00:00", "2026-03-31T00:00"].map((at) => ({ at, airK: kelvin(18) }));
    const listed = build({ temperature }, [done("prep", "2027-04-02T10:00")]);
    expect(listed.find("water").endsAt! > "2027-04-03").toBe(true);
  });

  it("what was done out of order stands as it happened, and what it needed is still to do", () => {
    const { find, value } = build({}, [done("laminate-bottom", "2026-03-28T11:00")]);
    expect(find("laminate-bottom")).toMatchObject({ done: true, endsAt: "2026-03-28T11:00" });
    expect(find("prep").startsAt! >= "2026-03-28T11:00").toBe(true);
    expect(value!.every(({ startsAt }) => startsAt !== null)).toBe(true);
  });

  it("a step done at no time is taken late, and that is told", () => {
    const { find, assumptions } = build({}, [done("prep"), done("mark-fins", "2026-03-28T13:00")]);
    expect(find("prep").endsAt).toBe("2026-03-28T13:00");
    expect(assumptions.map(({ path }) => path)).toContain("record");
  });

  it("laps that nobody cut in time are a finding", () => {
    const { findings } = build({}, [
      done("prep", "2026-03-28T10:00"),
      done("laminate-bottom", "2026-03-28T12:00"),
      { ...done("mark-fins", "2026-03-29T09:00"), id: "late" },
    ]);
    const said = findings.find(({ code }) => code === "calendar.window");
    expect(said).toMatchObject({ severity: "warning", path: "calendar[trim-bottom]" });
    expect(said?.text).toMatch(/ground off/);
  });

  it("foam that shows brings its repair's days before the water", () => {
    const place = { face: "deck", side: "left", fromTailM: 0.4, fromCentrelineM: 0.18, sizeM: 0.03 } as const;
    const { find } = build({}, [{ id: "r5", kind: "sand-through", shows: "foam", ...place }]);
    expect(find("repair-1-sand").endsAt! <= find("cure-out").startsAt!).toBe(true);
    expect(find("cure-out").startsAt! > build().find("cure-out").startsAt!).toBe(true);
  });
});

describe("days and clocks", () => {
  it("are counted where nobody gives a date, and that is said", () => {
    const { start: _, ...undated } = SHOP;
    const { board, parts } = makeShopBoard(
      { survey: { lengthM: 1.83 }, blank: { foam: "pu-48" }, glass: { resin: "polyester" }, shop: undated },
      "polyester",
    );
    const { value, findings } = buildCalendar(board, parts);
    expect(value?.[0]?.startsAt).toBe("day 1 09:00");
    expect(value?.at(-1)?.endsAt).toMatch(/^day \d+ \d\d:\d\d$/);
    expect(findings.map(({ code }) => code)).toContain("calendar.no-start");
  });

  it("a cure over the change to summer time ends an hour later by the wall, and hands begin by the wall", () => {
    const spring = build({ clockChanges: [{ at: "2026-03-29T02:00", byS: 3600 }] });
    const plain = build();
    const [coat, same] = [spring.find("seal-bottom"), plain.find("seal-bottom")];
    expect(coat.endsAt).toBe(same.endsAt);
    const full = (entry: CalendarEntry) => entry.moments.find(({ kind }) => kind === "full")!.at;
    expect(hoursBetween(full(same), full(coat))).toBe(1);
    const sunday = spring.value!.filter(({ startsAt }) => startsAt!.startsWith("2026-03-29"));
    expect(sunday.length).toBeGreaterThan(0);
    expect(sunday.every(({ startsAt }) => startsAt!.slice(11) >= "09:00")).toBe(true);
  });

  it("hours that end before they begin leave no calendar; the mix refuses them by name", () => {
    const { value, findings } = build({ hours: { from: "18:00", to: "09:00" } });
    expect(value).toBeNull();
    expect(findings.map(({ code }) => code)).toEqual(["calendar.not-known"]);
  });

  it("a coat that no day is long enough for ends the calendar with a word", () => {
    const { findings } = build({ hours: { from: "09:00", to: "09:35" }, experience: "first" });
    expect(findings.map(({ code }) => code)).toContain("calendar.hours-short");
  });
});

it("has a working for every number", () => {
  const texts = /(At|step|cause|kind)$/;
  const paths = [...listNumericPaths(build().value, "calendar")].filter((path) => !texts.test(path));
  expect(paths.sort()).toEqual(Object.keys(calendarWorking).sort());
  const context = { plan: { calendar: build().value }, board: { shop: SHOP } };
  for (const { inputs } of Object.values(calendarWorking))
    expect(inputs(context, ["fill-bottom"])).not.toEqual([]);
});
