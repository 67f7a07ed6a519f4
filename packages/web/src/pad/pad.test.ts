import { parseQuantity } from "@lapline/engine";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatPad } from "./formatPad";
import { emptyPad, FRACTION_KEYS, type PadKey, type PadValue } from "./PadValue";
import { pressKey } from "./pressKey";
import { readPad } from "./readPad";

/** `5 ft 1 0 1/2` as keys. */
function press(keys: string, from: PadValue = emptyPad("in")): string {
  return formatPad(keys.split(" ").reduce((value, name) => pressKey(value, keyOf(name)), from));
}

function keyOf(name: string): PadKey {
  const fraction = FRACTION_KEYS.find((key) => key.name === name);
  if (fraction !== undefined) return { kind: "fraction", ticks: fraction.ticks };
  if (/^\d$/.test(name)) return { kind: "digit", digit: name };
  if (name === ".") return { kind: "point" };
  return name === "back" ? { kind: "back" } : { kind: "unit", unit: name };
}

describe("keys of the pad", () => {
  test.each([
    ["1 1 1/4", "11 1/4 in"],
    ["5 ft 1 0 1/2", "5 ft 10 1/2 in"],
    ["6 ft", "6 ft"],
    ["1/4 1/8", "3/8 in"],
    ["1 1 1/2 1/2", "12 in"],
    ["7 1/8 1/16", "7 3/16 in"],
    ["2 8 5 mm", "285 mm"],
    ["1 . 8 8", "1.88 in"],
    [". 5", "0.5 in"],
    ["7 1/8 back", "7 in"],
    ["7 1/8 back back", ""],
    ["5 ft back", "5 in"],
    ["7 1/8 9", "9 in"],
    ["1 . 5 1/4", "1.5 in"],
    ["0 7", "7 in"],
    ["7 1/8 mm", "7 mm"],
    ["5 ft 1 2", "5 ft 1 in"],
    ["5 ft 1 1 1/2 1/2", "5 ft 11 1/2 in"],
  ])("%s is %s", (keys, text) => {
    expect(press(keys)).toBe(text);
  });

  test.each([
    ["3 1 0", "g", "310 g", 0.31],
    ["4 . 6", "g", "4.6 g", 0.0046],
    ["2 . 1 kg", "g", "2.1 kg", 2.1],
  ])("a mass: %s from %s is %s", (keys, unit, text, massKg) => {
    expect(press(keys, emptyPad(unit))).toBe(text);
    const read = parseQuantity(text, "mass");
    expect(read.ok && read.value).toBeCloseTo(massKg, 9);
  });

  test("11 1/4 in is 285.75 mm: the inch is 25.4 mm by definition", () => {
    const read = parseQuantity(press("1 1 1/4"), "length");
    expect(read.ok && read.value).toBeCloseTo(0.28575, 9);
  });

  test("whatever is pressed can be read as a length, or is nothing yet", () => {
    const names = ["0", "1", "5", "9", ".", "back", "ft", "in", "mm", "1/2", "1/4", "1/8", "1/16"];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...names), { minLength: 1, maxLength: 12 }), (keys) => {
        const text = press(keys.join(" "));
        if (text !== "") expect(parseQuantity(text, "length")).toMatchObject({ ok: true });
      }),
      { seed: 9, numRuns: 500 },
    );
  });
});

describe("what stands in a field", () => {
  test.each(["11 1/4 in", "5 ft 10 1/2 in", "285 mm", "7 5/32 in", "1.88 kg", "6 deg", "6 ft", "1/4 in"])(
    "%s is taken up and given back",
    (text) => expect(formatPad(readPad(text, "in"))).toBe(text),
  );

  test("feet and inches by their marks", () => {
    expect(formatPad(readPad(`5'10 1/2"`, "in"))).toBe("5 ft 10 1/2 in");
  });

  test.each(["", "about 6", "1 1/3 in", "6 yd"])("%s begins anew", (text) => {
    expect(readPad(text, "in")).toEqual(emptyPad("in"));
  });
});
