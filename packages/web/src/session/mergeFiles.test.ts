import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mergeFiles, type Pick } from "./mergeFiles";
import type { Three } from "./Three";

const clashesOf = (three: Three): string[] => {
  const paths: string[] = [];
  mergeFiles(three, (changed, { theirs }, path) => {
    if (changed === "clash") paths.push(path);
    return theirs;
  });
  return paths;
};
const BOTH: Pick = (changed, { mine, theirs }) => (changed === "mine" ? mine : theirs);
const station = (fromTail: string, left: string) => ({ fromTail, left, right: left });
const BASE = {
  name: "a",
  survey: { length: "6'0\"", stations: [station("6 in", "3 in"), station("12 in", "7 in")] },
  record: [{ id: "r1", kind: "done", step: "prep" }],
};
const withStations = (...stations: object[]) => ({ ...BASE, survey: { ...BASE.survey, stations } });

describe("mergeFiles", () => {
  test("two fields changed on two devices are both kept", () => {
    const mine = { ...BASE, name: "b" };
    const theirs = withStations(BASE.survey.stations[0] ?? {}, station("12 in", "8 in"));
    const merged = { ...theirs, name: "b" };
    expect(mergeFiles({ base: BASE, mine, theirs }, BOTH)).toEqual(merged);
    expect(clashesOf({ base: BASE, mine, theirs })).toEqual([]);
  });

  test("one field changed in two ways is a clash, in the same way none", () => {
    const mine = { ...BASE, name: "b" };
    expect(clashesOf({ base: BASE, mine, theirs: { ...BASE, name: "c" } })).toEqual(["name"]);
    expect(clashesOf({ base: BASE, mine, theirs: { ...BASE, name: "b" } })).toEqual([]);
  });

  test("a reading follows its station where another one came before it or went", () => {
    const mine = withStations(station("6 in", "3 in"), station("12 in", "7 1/8 in"));
    const theirs = withStations(station("3 in", "2 in"), ...BASE.survey.stations);
    const merged = mergeFiles({ base: BASE, mine, theirs }, BOTH);
    expect(merged).toEqual(
      withStations(station("3 in", "2 in"), station("6 in", "3 in"), station("12 in", "7 1/8 in")),
    );
    const without = withStations(station("12 in", "7 in"));
    expect(mergeFiles({ base: BASE, mine, theirs: without }, BOTH)).toEqual(
      withStations(station("12 in", "7 1/8 in")),
    );
  });

  test("a station moved along the tape here and read anew there is the same station", () => {
    const mine = withStations(BASE.survey.stations[0] ?? {}, station("12 1/2 in", "7 in"));
    const theirs = withStations(BASE.survey.stations[0] ?? {}, station("12 in", "8 in"));
    const merged = mergeFiles({ base: BASE, mine, theirs }, BOTH) as typeof BASE;
    expect(merged.survey.stations[1]).toEqual(station("12 1/2 in", "8 in"));
  });

  test("a station taken away here and read anew there is a clash", () => {
    const mine = withStations(station("12 in", "7 in"));
    const theirs = withStations(station("6 in", "3 1/4 in"), station("12 in", "7 in"));
    expect(clashesOf({ base: BASE, mine, theirs })).toEqual(["survey.stations[0]"]);
  });

  test("the record is all entries of both, and none of it is ever taken away", () => {
    const entry = (id: string) => ({ id, kind: "done", step: id });
    const mine = { ...BASE, record: [...BASE.record, entry("m")] };
    const theirs = { ...BASE, record: [entry("t")] };
    const merged = mergeFiles({ base: BASE, mine, theirs }, BOTH) as typeof BASE;
    expect(merged.record.map(({ id }) => id)).toEqual(["t", "r1", "m"]);
  });

  test("another kind of tail is taken whole", () => {
    const tail = (kind: string, fields: object) => ({ tail: { kind, ...fields } });
    const base = tail("squash", { width: "5 in" });
    const mine = tail("pin", {});
    const theirs = tail("squash", { width: "6 in" });
    expect(clashesOf({ base, mine, theirs })).toEqual(["tail"]);
  });
});

/* What a three-way merge is: the side that changed wins, and both changed unlike is a conflict (Khanna, Kunal and Pierce 2007, from memory). */
/** A field that is undefined is not there. */
const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe("on random files", () => {
  const value = fc.option(fc.constantFrom("1 in", "2 in", "3 in"), { nil: undefined });
  const file = fc.record({
    a: value,
    b: value,
    c: fc.record({ kind: fc.constant("k"), d: value, e: value }),
  });
  const fieldsOf = ({ a, b, c }: { a: unknown; b: unknown; c: { d: unknown; e: unknown } }) => [
    a,
    b,
    c.d,
    c.e,
  ];

  test("each field is the one that changed, and a clash where both did, each in its own way", () => {
    fc.assert(
      fc.property(file, file, file, (base, mine, theirs) => {
        const three = { base, mine, theirs };
        const merged = fieldsOf(mergeFiles(three, BOTH) as typeof base);
        const clashes = clashesOf(three);
        const [was, here, there] = [fieldsOf(base), fieldsOf(mine), fieldsOf(theirs)];
        const paths = ["a", "b", "c.d", "c.e"];
        for (const [i, path] of paths.entries()) {
          const isClash = here[i] !== there[i] && here[i] !== was[i] && there[i] !== was[i];
          expect(clashes.includes(path)).toBe(isClash);
          if (!isClash) expect(merged[i]).toBe(here[i] === was[i] ? there[i] : here[i]);
        }
      }),
      { seed: 1, numRuns: 300 },
    );
  });

  test("with nothing changed on one side it is the other's", () => {
    fc.assert(
      fc.property(file.map(asJson), file.map(asJson), (base, other) => {
        expect(mergeFiles({ base, mine: other, theirs: base }, BOTH)).toEqual(other);
        expect(mergeFiles({ base, mine: base, theirs: other }, BOTH)).toEqual(other);
      }),
      { seed: 2, numRuns: 200 },
    );
  });
});
