import { DEMO_BOARDS } from "@lapline/contract";
import { describe, expect, test } from "vitest";
import { planOf } from "../plan/planOf";
import { localMs } from "../shared/localMs";
import { hearAlarms, readHeard, withCome } from "./hearAlarms";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** The demo's quad with the bottom's hardener in at that minute, or with none. */
function quadMixed(at: string | null) {
  const file = JSON.parse(DEMO_BOARDS.find(({ id }) => id === "five-ten-quad")?.text ?? "");
  const cup = { id: "r1", kind: "mixed", coat: "laminate-bottom", base: "300 g", hardener: "5.4 g", at };
  const read = planOf(JSON.stringify({ ...file, record: at === null ? [] : [cup] }));
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
  return read.plan;
}

const STARTED = "2026-04-11T10:45";
const startMs = localMs(STARTED) ?? Number.NaN;
const mixed = quadMixed(STARTED);
const everything = hearAlarms(mixed, {}, startMs + 10 * HOUR_MS).come;
const [spread, trim] = everything;
if (spread === undefined || trim === undefined) throw new Error("a laminate is spread and trimmed");
const kinds = (hearing: ReturnType<typeof hearAlarms>) => hearing.come.map(({ kind }) => kind);

describe("a time of the wet clock", () => {
  test("rings once as it comes, however long the device slept", () => {
    expect(everything.map(({ kind }) => kind).slice(0, 2)).toEqual(["spread", "trim"]);
    const first = hearAlarms(mixed, {}, spread.atMs - 1);
    expect(kinds(first)).toEqual([]);
    const second = hearAlarms(mixed, first.heard, spread.atMs);
    expect(kinds(second)).toEqual(["spread"]);
    expect(kinds(hearAlarms(mixed, second.heard, spread.atMs + 1))).toEqual([]);
    expect(kinds(hearAlarms(mixed, second.heard, trim.atMs + HOUR_MS))).toContain("trim");
    expect(kinds(hearAlarms(mixed, second.heard, trim.atMs + HOUR_MS))).not.toContain("spread");
  });

  test("that was past when another device told of the cup rings at once", () => {
    const before = hearAlarms(quadMixed(null), {}, trim.atMs + MINUTE_MS);
    expect(kinds(before)).toEqual([]);
    const told = hearAlarms(mixed, before.heard, trim.atMs + 2 * MINUTE_MS);
    expect(kinds(told)).toEqual(["spread", "trim"]);
    expect(kinds(hearAlarms(mixed, told.heard, trim.atMs + 3 * MINUTE_MS))).toEqual([]);
  });

  test("rings once more where a later cup moves it, and not where it was put right by less than a minute or to earlier", () => {
    const { heard } = hearAlarms(mixed, {}, trim.atMs + HOUR_MS);
    const again = (at: string) => kinds(hearAlarms(quadMixed(at), heard, trim.atMs + HOUR_MS));
    expect(again("2026-04-11T10:55")).toEqual(expect.arrayContaining(["spread", "trim"]));
    expect(again("2026-04-11T10:40")).not.toContain("spread");
    expect(
      kinds(hearAlarms(mixed, { ...heard, "laminate-bottom spread": spread.atMs - 1 }, trim.atMs)),
    ).toEqual([]);
  });

  test("is not rung for on a device that opens the Bench for the first time, nor half a day after it was", () => {
    const first = hearAlarms(mixed, null, trim.atMs);
    expect(kinds(first)).toEqual([]);
    expect(kinds(hearAlarms(mixed, first.heard, trim.atMs + 1))).toEqual([]);
    expect(kinds(hearAlarms(mixed, {}, spread.atMs + 12 * HOUR_MS))).not.toContain("spread");
    expect(hearAlarms(mixed, first.heard, startMs + 72 * HOUR_MS).heard).toEqual({});
  });

  test("that rings anew stands in the place of its earlier one", () => {
    const later = { ...spread, atMs: spread.atMs + HOUR_MS };
    expect(withCome([spread, trim], [later])).toEqual([trim, later]);
  });
});

test("what a device kept is read as it was, and anything else as nothing", () => {
  const { heard } = hearAlarms(mixed, {}, trim.atMs);
  expect(readHeard(JSON.stringify(heard))).toEqual(heard);
  for (const text of [null, "", "{", "3", '"x"', '{"laminate-bottom spread":"soon"}'])
    expect(readHeard(text)).toBeNull();
});
