import { expect, test } from "vitest";
import { bottomsOf, sectionsOf, withAnother, withoutOne } from "./sectionPlaces";

const whole = { apex: 0.4, deckFullness: 2.6, bottomFullness: 8 };

test("one section and a list of them are edited at their own places in the file", () => {
  expect(sectionsOf(undefined)).toEqual([]);
  expect(sectionsOf(whole)).toEqual([{ path: ["survey", "section"], value: whole }]);
  const listed = sectionsOf([{ fromTail: "0 in", ...whole, bottom: { kind: "flat" } }]);
  expect(listed[0]?.path).toEqual(["survey", "section", 0]);
  expect(listed.flatMap(bottomsOf).map(({ path }) => path)).toEqual([["survey", "section", 0, "bottom"]]);
});

test("another place makes a list, and the last one left holds for the whole board again", () => {
  const two = withAnother<typeof whole>(whole);
  expect(two).toEqual([
    { fromTail: "0 in", ...whole },
    { fromTail: "", ...whole },
  ]);
  expect(withAnother(two)).toHaveLength(3);
  expect(withoutOne(two, 1)).toEqual(whole);
  expect(withoutOne([whole], 0)).toBeUndefined();
});
