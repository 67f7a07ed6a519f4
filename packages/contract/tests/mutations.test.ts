import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DEMO_BOARDS } from "../src/demoBoards";
import { readBoardFile } from "../src/readBoardFile";
import { valueAt } from "../src/reading/describeRead";

const RUNS = { seed: 20260411, numRuns: 250 };

type Place = readonly (string | number)[];

function placesIn(value: unknown, at: Place = []): Place[] {
  if (typeof value !== "object" || value === null) return [at];
  const inside = Array.isArray(value)
    ? value.flatMap((element, i) => placesIn(element, [...at, i]))
    : Object.entries(value).flatMap(([key, member]) => placesIn(member, [...at, key]));
  return [at, ...inside];
}

const odd = fc.oneof(
  fc.constantFrom(
    null,
    true,
    0,
    -1,
    1e308,
    11.25,
    "",
    "NaN",
    "Infinity mm",
    "3 m",
    "-3 in",
    "11 1/4",
    "5'10\"",
    "1e9 kg",
  ),
  fc.constantFrom([], {}, [[]], [{}], { kind: "squash" }, { fromTail: "1 in" }, { day: "1 C" }, ["e-136"]),
  fc.string({ maxLength: 40 }),
  fc.string({ unit: "binary", maxLength: 20 }),
  fc.jsonValue({ maxDepth: 3 }),
);

interface Change {
  readonly where: number;
  readonly how: "set" | "remove" | "add" | "double";
  readonly key: string;
  readonly value: unknown;
}

const change: fc.Arbitrary<Change> = fc.record({
  where: fc.nat(),
  how: fc.constantFrom("set", "remove", "add", "double"),
  key: fc.oneof(
    fc.constantFrom("__proto__", "constructor", "toString", "length", "fromTail", "kind", "left", "thicknes"),
    fc.string({ maxLength: 12 }),
  ),
  value: odd,
});

function apply(document: unknown, { where, how, key, value }: Change): unknown {
  const places = placesIn(document);
  const at = places[where % places.length] ?? [];
  let holder: unknown = document;
  for (const step of at.slice(0, -1)) holder = Reflect.get(Object(holder), step);
  const last = at.at(-1);
  if (last === undefined || typeof holder !== "object" || holder === null)
    return how === "set" ? value : document;
  const target: unknown = Reflect.get(holder, last);
  if (how === "set") Reflect.set(holder, last, value);
  else if (how === "remove") Reflect.deleteProperty(holder, last);
  else if (how === "double" && Array.isArray(holder)) holder.push(target);
  else if (how === "add" && typeof target === "object" && target !== null && !Array.isArray(target)) {
    Object.defineProperty(target, key, { value, enumerable: true, configurable: true, writable: true });
  }
  return document;
}

/** Text of a file with something wrong in its letters. */
function spoil(text: string, where: number, piece: string): string {
  const at = where % (text.length + 1);
  return text.slice(0, at) + piece + text.slice(at + (where % 3));
}

const isSound = (value: unknown): boolean =>
  typeof value === "number" ? Number.isFinite(value) : value !== null && value !== undefined;

function expectAnswer(text: string): void {
  const result = readBoardFile(text);
  if (result.ok) {
    expect(placesIn(result.board).every((at) => isSound(valueAt(result.board, at)))).toBe(true);
    expect(readBoardFile(JSON.stringify(result.file)).ok).toBe(true);
    return;
  }
  expect(result.problems.length).toBeGreaterThan(0);
  expect(result.problems.length).toBeLessThanOrEqual(51);
  for (const { path, read, message } of result.problems) {
    expect(path.length * read.length * message.length).toBeGreaterThan(0);
    expect(`${path}${read}${message}`.length).toBeLessThan(1500);
    expect(/[\p{Cc}\p{Bidi_Control}]/u.test(path + read + message), JSON.stringify(message)).toBe(false);
  }
}

describe("a file that something has gone wrong with", () => {
  it.each(DEMO_BOARDS.map(({ id, text }) => ({ id, text })))(
    "$id: fields changed, taken out, added, doubled",
    ({ text }) => {
      fc.assert(
        fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
          expectAnswer(JSON.stringify(changes.reduce(apply, JSON.parse(text) as unknown)) ?? "");
        }),
        RUNS,
      );
    },
  );

  it.each(DEMO_BOARDS.map(({ id, text }) => ({ id, text })))("$id: letters changed", ({ text }) => {
    const pieces = fc.oneof(
      fc.constantFrom('"', "{", "}", "[", "]", ",", ":", "\\", "\u0000", "0", "-", "é"),
      fc.string({ maxLength: 4 }),
    );
    fc.assert(
      fc.property(fc.nat(), pieces, (where, piece) => {
        expectAnswer(spoil(text, where, piece));
      }),
      RUNS,
    );
  });

  it("any text at all", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: "binary" }), fc.json()), (text) => {
        expectAnswer(text);
      }),
      RUNS,
    );
  });
});
