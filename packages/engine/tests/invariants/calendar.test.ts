import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildCalendar } from "../../src/calendar/buildCalendar";
import type { CalendarEntry } from "../../src/calendar/CalendarPlan";
import type { StepsInput } from "../../src/steps/StepsInput";
import { shopBoards } from "../fixtures/calendarShops";
import { kelvin } from "../fixtures/mixLayup";

const SEED = 20260411;
const runs = { numRuns: 1000, seed: SEED };

/** From when a need lets its step begin, by what the calendar itself says of the step that is needed. */
function opensAt(needed: CalendarEntry, until: string): string | null {
  const kind = until === "sandable" ? "sand" : until;
  const moment = needed.moments.find((each) => each.kind === kind);
  if (moment !== undefined) return moment.at;
  return needed.step === "cure-out" ? needed.readyAt : needed.endsAt;
}

/** Open for a third of the day in air that cures: then there is a time for every coat at which its laps can be cut. */
function hasLongDays({ shop }: StepsInput): boolean {
  const { temperature, hours } = shop ?? {};
  if (temperature === undefined || !("dayK" in temperature) || hours === undefined) return false;
  const isLong = Number(hours.to.slice(0, 2)) - Number(hours.from.slice(0, 2)) >= 8;
  return isLong && temperature.dayK >= kelvin(18) && temperature.nightK >= kelvin(15);
}

const minutesOf = (text: string) => Number(text.slice(11, 13)) * 60 + Number(text.slice(14, 16));

describe("in 1,000 random shops", () => {
  const built = fc.sample(shopBoards, runs).map(({ board, parts }) => {
    const { value, findings } = buildCalendar(board, parts);
    const entries = new Map(value?.map((entry) => [entry.step, entry]));
    return { board, parts, findings, entries };
  });
  const toDo = built.flatMap((shop) =>
    [...shop.entries.values()]
      .filter(({ done, startsAt }) => !done && startsAt !== null)
      .map((entry) => ({ ...shop, entry, start: entry.startsAt! })),
  );

  it("most boards come to the water, and each of the rest is told why not", () => {
    const dry = built.filter(({ entries }) => entries.get("water")?.startsAt === null);
    expect(dry.length).toBeLessThan(100);
    for (const { findings } of dry)
      expect(findings.map(({ code }) => code)).toContainEqual(
        expect.stringMatching(/^calendar\.(unknown|hours-short)$/),
      );
  });

  it("no step begins before every step that it needs has come so far", () => {
    let checked = 0;
    for (const { entry, entries, parts, start } of toDo) {
      for (const need of parts.steps!.find(({ id }) => id === entry.step)!.needs) {
        const opens = opensAt(entries.get(need.step)!, need.until);
        if (need.until === "dry") continue;
        checked++;
        expect(opens !== null && start >= opens, `${entry.step} at ${start}, ${need.step} at ${opens}`).toBe(
          true,
        );
      }
    }
    expect(checked).toBeGreaterThan(20_000);
  });

  it("hands are on in the hours only, one step at a time, and on a full five minutes", () => {
    for (const { board, entries } of built) {
      const { from, to } = board.shop!.hours!;
      const sittings = [...entries.values()]
        .filter(({ done }) => !done)
        .flatMap((entry) => entry.sittings)
        .toSorted((a, b) => a.startsAt.localeCompare(b.startsAt));
      for (const [i, { startsAt, endsAt }] of sittings.entries()) {
        expect(startsAt.slice(0, 10)).toBe(endsAt.slice(0, 10));
        expect(startsAt.slice(11) >= from && endsAt.slice(11) <= to).toBe(true);
        expect(minutesOf(startsAt) % 5).toBe(0);
        expect(i === 0 || sittings[i - 1]!.endsAt <= startsAt).toBe(true);
      }
    }
  });

  it("laps are cut while the cloth is leathery, or a warning says that they are not", () => {
    let [kept, late] = [0, 0];
    for (const { board, entry, entries, parts, findings, start } of toDo) {
      const need = parts
        .steps!.find(({ id }) => id === entry.step)!
        .needs.find(({ until }) => until === "trim");
      if (need === undefined) continue;
      const window = entries.get(need.step)!.moments.find(({ kind }) => kind === "trim")!;
      if (entry.late) {
        late++;
        expect(findings.map(({ path }) => path)).toContain(`calendar[${entry.step}]`);
        expect(hasLongDays(board) && !entries.get(need.step)!.done, entry.step).toBe(false);
      } else if (window.untilAt !== null) {
        kept++;
        // A window narrower than the full five minutes is met by the first of them.
        const grace = minutesOf(start) - minutesOf(window.at) < 5;
        expect(start <= window.untilAt || grace, `${start} ${window.at} ${window.untilAt}`).toBe(true);
      }
    }
    expect(kept).toBeGreaterThan(500);
    expect(late).toBeGreaterThan(0);
  });

  it("a coat goes on while the one below still bonds, or that is sanded first and said", () => {
    let [kept, sanded] = [0, 0];
    for (const { entry, entries, parts, findings, start } of toDo) {
      const step = parts.steps!.find(({ id }) => id === entry.step)!;
      const windows = step.needs
        .filter(({ until }) => until === "recoat" && step.cures !== null)
        .flatMap(({ step: needed }) => entries.get(needed)!.moments.filter(({ kind }) => kind === "recoat"))
        .flatMap(({ untilAt }) => (untilAt === null ? [] : [untilAt]));
      const isOpen = windows.every((untilAt) => start <= untilAt);
      if (windows.length === 0) continue;
      if (isOpen) kept++;
      else {
        sanded++;
        expect(
          findings.some(({ code, text }) => code === "calendar.sand-first" && text.includes(entry.step)),
        ).toBe(true);
      }
      expect(entry.sandFirstS > 0).toBe(!isOpen);
    }
    expect(kept).toBeGreaterThan(500);
    expect(sanded).toBeGreaterThan(20);
  });

  it("no slack is negative, and the last step has none", () => {
    for (const { entry, start } of toDo) {
      expect(entry.slackS).toBeGreaterThanOrEqual(0);
      expect(entry.latestStartAt! >= start).toBe(true);
      if (entry.step === "water") expect(entry.slackS).toBe(0);
    }
  });

  it("what is done stands at its time, and nothing that is still to do lies before", () => {
    for (const { board, entries } of built) {
      const times = (board.record ?? []).flatMap(({ at }) => at ?? []);
      for (const entry of entries.values()) {
        if (entry.done) expect(times).toContain(entry.endsAt);
        else if (entry.startsAt !== null)
          expect([board.shop!.start!, ...times].every((at) => at <= entry.startsAt!)).toBe(true);
      }
    }
  });
});
