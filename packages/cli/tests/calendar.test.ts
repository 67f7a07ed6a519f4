import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DEMO_BOARDS } from "@lapline/contract";
import ICAL from "ical.js";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { runHere } from "./runHere";

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "lapline-calendar-"));
});
afterAll(() => rm(folder, { recursive: true }));

/** The demo quad, not yet begun, in a shop of even temperature, with the shop changed. */
function boardText(shop: object): string {
  const file = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
  delete file.record;
  const even = { temperature: { day: "20 C", night: "20 C" }, hours: { from: "09:00", to: "20:00" } };
  return JSON.stringify({ ...file, shop: { ...file.shop, ...even, ...shop } });
}

interface Read {
  readonly code: number;
  readonly err: string;
  readonly text: string;
  readonly events: ReadonlyMap<string, ICAL.Event>;
}

async function calendarOf(shop: object, ...words: readonly string[]): Promise<Read> {
  const out = join(folder, "out.ics");
  await rm(out, { force: true });
  const { code, err } = await runHere(["calendar", "-", "-o", out, ...words], boardText(shop));
  const text = await readFile(out, "utf8").catch(() => "");
  const events = text === "" ? [] : new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
  const byId = events.map((each) => new ICAL.Event(each)).map((event) => [event.uid, event] as const);
  return { code, err, text, events: new Map(byId) };
}

const hoursBetween = (a: ICAL.Time, b: ICAL.Time) =>
  (b.toJSDate().getTime() - a.toJSDate().getTime()) / 3_600_000;

describe("lapline calendar, read by ical.js", () => {
  test("floats where no zone is named, with the plan's own wall times and the command's stamp", async () => {
    const { code, events, text } = await calendarOf({ start: "2026-04-11T09:00" });
    expect(code).toBe(0);
    const laminate = events.get("ns-041.laminate-bottom@lapline")!;
    expect(laminate.startDate.zone).toBe(ICAL.Timezone.localTimezone);
    expect(laminate.startDate.toString()).toMatch(/^2026-04-11T\d\d:\d\d:00$/);
    expect(text).toContain("DTSTAMP:20260411T");
    expect(text.split("\r\n").every((line) => Buffer.byteLength(line) <= 75)).toBe(true);
  });

  test("has an alarm for laps, tape, flip and the next coat", async () => {
    const { events } = await calendarOf({ start: "2026-04-11T09:00" });
    const alarms = (id: string) =>
      events
        .get(`ns-041.${id}@lapline`)!
        .component.getAllSubcomponents("valarm")
        .map((alarm) => ({
          action: alarm.getFirstPropertyValue("action"),
          trigger: String(alarm.getFirstPropertyValue("trigger")),
        }));
    for (const id of ["fill-bottom.tape", "fill-deck.flip", "laminate-bottom.recoat", "sand-deck"])
      expect(alarms(id), id).toEqual([{ action: "DISPLAY", trigger: "PT0S" }]);
    expect(alarms("trim-bottom")).toHaveLength(2);
    expect(alarms("trim-bottom")[0]?.trigger).toMatch(/^-PT\d+M/);
  });

  test("keeps its UIDs, so that a second import replaces the first", async () => {
    const [first, later] = [
      await calendarOf({ start: "2026-04-11T09:00" }),
      await calendarOf({ start: "2026-04-13T09:00" }),
    ];
    const steps = (read: Read) => [...read.events.keys()].filter((id) => id.split(".").length === 2).sort();
    expect(steps(later)).toEqual(steps(first));
    expect(new Set(first.events.keys()).size).toBe(first.events.size);
  });

  // Clocks in this zone go from 02:00 to 03:00 on 29 March 2026 (IANA time zone data, by Node's Intl).
  test("counts the hours that pass over the change to summer time, and the shop's hours by the wall", async () => {
    const start = "2026-03-28T09:00";
    const zoned = await calendarOf({ start, timeZone: "Europe/Berlin" });
    const even = await calendarOf({ start, timeZone: "UTC" });
    const of = (read: Read, id: string) => read.events.get(`ns-041.${id}@lapline`)!.startDate;
    // 09:00 by the wall is 08:00 UTC on the Saturday and 07:00 UTC on the Sunday.
    expect(of(zoned, "prep").toJSDate().toISOString()).toBe("2026-03-28T08:00:00.000Z");
    const sunday = [...zoned.events.values()].map(({ startDate }) => startDate.toJSDate().toISOString());
    expect(sunday).toContain("2026-03-29T07:00:00.000Z");
    expect(sunday.filter((at) => at > "2026-03-29T00:00" && at < "2026-03-29T07:00")).toEqual([]);
    // What cures through that night is ready after as many hours as through any other.
    const cured = (read: Read) =>
      hoursBetween(of(read, "prep"), read.events.get("ns-041.water@lapline")!.endDate);
    expect(of(zoned, "water").toJSDate() < of(even, "water").toJSDate()).toBe(true);
    expect(Math.abs(cured(zoned) - cured(even))).toBeLessThanOrEqual(24);
  });

  test("is in German where asked", async () => {
    const { text } = await calendarOf({ start: "2026-04-11T09:00" }, "--language", "de");
    expect(text).toContain("PRODID:-//Lapline//Lapline//DE");
    expect(text).toContain("Band abziehen");
  });
});

describe("several boards in one shop", () => {
  const inShop = async (...words: readonly string[]) => {
    const files = await Promise.all(
      ["first", "second"].map(async (name) => {
        const path = join(folder, `${name}.json`);
        const file = JSON.parse(boardText({ start: "2026-04-11T09:00" }));
        await writeFile(path, JSON.stringify({ ...file, name, order: { ...file.order, serial: name } }));
        return path;
      }),
    );
    const out = join(folder, "shop.ics");
    const result = await runHere(["calendar", ...files, "-o", out, "--units", "mm", ...words]);
    const text = await readFile(out, "utf8").catch(() => "");
    const events = text === "" ? [] : new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
    return { ...result, events: events.map((each) => new ICAL.Event(each)) };
  };

  test("share hands and stands, and the file says whose each step is", async () => {
    const { code, out, err, events } = await inShop("--stands", "1");
    expect(code).toBe(0);
    const steps = events.filter(({ uid }) => uid.split(".").length === 2);
    expect(new Set(steps.map(({ summary }) => summary.split(":")[0]))).toEqual(new Set(["first", "second"]));
    // One crew: no two sittings of any board at once.
    const times = steps
      .map(
        ({ startDate, endDate }) => [startDate.toJSDate().getTime(), endDate.toJSDate().getTime()] as const,
      )
      .toSorted((a, b) => a[0] - b[0]);
    for (const [i, [begin]] of times.entries())
      expect(i === 0 || (times[i - 1]?.[1] ?? 0) <= begin).toBe(true);
    for (const head of ["FIRST SURF", "STANDS", "WHAT SLIPS", "later"]) expect(out).toContain(head);
    expect(err).toContain("first: Not for water: ");
    // On one pair of stands a stay begins when the one before it has ended.
    const stays = out
      .slice(out.indexOf("STANDS"), out.indexOf("WHAT SLIPS"))
      .split("\n")
      .filter((line) => /^ +1 +\w{3} \d/.test(line));
    expect(stays.length).toBeGreaterThan(4);
  });

  test("refuse what cannot be: stands for one board, no whole number, a board without start", async () => {
    const board = join(folder, "first.json");
    const out = join(folder, "none.ics");
    expect((await runHere(["calendar", board, "-o", out, "--stands", "2"])).err).toMatch(/several boards/);
    expect((await inShop("--stands", "0")).err).toMatch(/whole number from 1/);
    const bare = join(folder, "bare.json");
    await writeFile(bare, boardText({ start: undefined }));
    const mixed = await runHere(["calendar", board, bare, "-o", out]);
    expect(mixed.code).toBe(2);
    expect(mixed.err).toMatch(/some boards have a start and some have none/);
  });
});

describe("what is refused", () => {
  test("a board without a start has no dates to write", async () => {
    const { code, err, text } = await calendarOf({ start: undefined });
    expect([code, text]).toEqual([2, ""]);
    expect(err).toMatch(/name the start/);
  });

  test("a board that was only measured has no steps, and what they want is named", async () => {
    const { format, name, survey } = JSON.parse(DEMO_BOARDS[0]?.text ?? "");
    const words = ["calendar", "-", "-o", join(folder, "none.ics")];
    const { code, err } = await runHere(words, JSON.stringify({ format, name, survey }));
    expect(code).toBe(2);
    expect(err).toMatch(/no steps are planned.*glass.*Nothing was written/);
    expect(err).not.toContain("stand in the way");
  });

  test("hours that end before they begin", async () => {
    const { code, err, text } = await calendarOf({
      start: "2026-04-11T09:00",
      hours: { from: "18:00", to: "09:00" },
    });
    expect([code, text]).toEqual([2, ""]);
    expect(err).toMatch(/shop\.hours/);
  });

  test("another ending than .ics, and a file that is read", async () => {
    const board = join(folder, "board.ics");
    await writeFile(board, boardText({}));
    expect((await runHere(["calendar", board, "-o", join(folder, "out.txt")])).err).toMatch(/ends in \.ics/);
    expect((await runHere(["calendar", board, "-o", board])).err).toMatch(/would be lost/);
  });
});
