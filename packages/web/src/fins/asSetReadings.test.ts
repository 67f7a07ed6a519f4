import { describe, expect, test } from "vitest";
import { demoPlan } from "../../tests/demoPlan";
import { findAsSet, readAsSet, withAsSet } from "./asSetReadings";
import type { FinMark } from "./FinsForm";

const { finset } = demoPlan();
const markOf = (id: string): FinMark => {
  const mark = finset.marks.find((each) => each.id === id);
  if (mark === undefined) throw new Error(`no mark ${id}`);
  return mark;
};
const left = markOf("front-left");
const right = markOf("front-right");
const trailing = ["trailing", "fromTail"] as const;

describe("fins as set in the file", () => {
  test("the first reading makes an entry with fin and side, the next goes into it", () => {
    const one = withAsSet(undefined, left, { place: trailing, text: "292 mm" });
    expect(one).toEqual([{ fin: "front", side: "left", trailing: { fromTail: "292 mm" } }]);
    const two = withAsSet(one, left, { place: ["trailing", "fromCentreline"], text: "152 mm" });
    expect(two).toEqual([
      { fin: "front", side: "left", trailing: { fromTail: "292 mm", fromCentreline: "152 mm" } },
    ]);
    const other = withAsSet(two, right, { place: ["cant"], text: "6 deg" });
    expect(other?.[1]).toEqual({ fin: "front", side: "right", cant: "6 deg" });
    expect(findAsSet(other, right)).toBe(1);
    expect(readAsSet(other?.[1], ["cant"])).toBe("6 deg");
    expect(readAsSet(other?.[0], trailing)).toBe("292 mm");
  });

  test("an emptied field goes, and what has nothing left goes with it", () => {
    const one = withAsSet(undefined, left, { place: trailing, text: "292 mm" });
    const on = withAsSet(one, left, { place: ["on"], text: "fill" });
    expect(withAsSet(on, left, { place: trailing, text: " " })).toBeUndefined();
    const both = withAsSet(on, right, { place: trailing, text: "292 mm" });
    expect(withAsSet(both, left, { place: trailing, text: "" })).toEqual([
      { fin: "front", side: "right", trailing: { fromTail: "292 mm" } },
    ]);
    expect(withAsSet(undefined, left, { place: trailing, text: "" })).toBeUndefined();
  });

  test("a slip stays as it was typed", () => {
    expect(withAsSet(undefined, left, { place: trailing, text: "2x" })?.[0]?.trailing?.fromTail).toBe("2x");
  });
});
