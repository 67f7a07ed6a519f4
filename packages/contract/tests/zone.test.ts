import { describe, expect, it } from "vitest";
import { readBoardFile } from "../src/readBoardFile";
import { clockChangesOf } from "../src/zone/clockChangesOf";
import { utcOfWall } from "../src/zone/utcOfWall";
import { editDemo } from "./editDemo";

/**
 * Dates of the IANA time zone data: in the European Union clocks change at 01:00 UTC on the last Sundays of March and October
 * (directive 2000/84/EC), in the United States at 02:00 on the second Sunday of March and the first of November (Energy Policy
 * Act of 2005); both from memory.
 */
describe("the changes of a zone's clocks", () => {
  it.each([
    ["Europe/Berlin", ["2026-03-29T02:00 3600", "2026-10-25T03:00 -3600", "2027-03-28T02:00 3600"]],
    ["Europe/Dublin", ["2026-03-29T01:00 3600", "2026-10-25T02:00 -3600", "2027-03-28T01:00 3600"]],
    ["America/New_York", ["2026-03-08T02:00 3600", "2026-11-01T02:00 -3600", "2027-03-14T02:00 3600"]],
    ["UTC", []],
  ])("%s", (zone, changes) => {
    const found = clockChangesOf(zone, ["2026-03-08T00:00"]);
    expect(found.map(({ at, byS }) => `${at} ${byS}`)).toEqual(changes);
  });

  it("are none without a date to look about", () => {
    expect(clockChangesOf("Europe/Berlin", [])).toEqual([]);
  });
});

describe("the moment of a wall time", () => {
  it.each([
    ["2026-03-29T01:59", "2026-03-29T00:59:00.000Z"],
    ["2026-03-29T03:00", "2026-03-29T01:00:00.000Z"],
    ["2026-07-01T12:00", "2026-07-01T10:00:00.000Z"],
    ["2026-10-25T01:59", "2026-10-24T23:59:00.000Z"],
    ["2026-10-25T03:00", "2026-10-25T02:00:00.000Z"],
  ])("%s in Berlin", (wall, utc) => {
    expect(utcOfWall("Europe/Berlin", wall).toISOString()).toBe(utc);
  });

  it("takes a skipped one by the clock before, and the first of two (RFC 5545, 3.3.5)", () => {
    expect(utcOfWall("Europe/Berlin", "2026-03-29T02:30").toISOString()).toBe("2026-03-29T01:30:00.000Z");
    expect(utcOfWall("Europe/Berlin", "2026-10-25T02:30").toISOString()).toBe("2026-10-25T00:30:00.000Z");
  });
});

describe("shop.timeZone", () => {
  const read = (zone: unknown) => readBoardFile(JSON.stringify(editDemo(["shop", "timeZone"], zone)));

  it("gives the engine the changes, and no zone", () => {
    const told = read("Europe/Berlin");
    expect(told.ok && told.board.shop?.clockChanges?.[0]).toEqual({ at: "2026-10-25T03:00", byS: -3600 });
    expect(told.ok && "timeZone" in (told.board.shop ?? {})).toBe(false);
  });

  it.each(["CEST", "+01:00", "Europe/Nowhere", "", 1])("refuses %o and says what is right", (zone) => {
    const told = read(zone);
    expect(told.ok).toBe(false);
    expect(told.ok ? "" : told.problems.map(({ path }) => path).join(" ")).toContain("shop.timeZone");
    expect(told.ok ? "" : JSON.stringify(told.problems)).toMatch(/IANA name/);
  });
});
