import { expect, test } from "vitest";
import { chooseOffset } from "./chooseOffset";

const distancesToJoints = (start: number, stepMm: number, count: number, places: readonly number[]) =>
  places.map((place) =>
    Math.min(...Array.from({ length: count - 1 }, (_, i) => Math.abs(start + (i + 1) * stepMm - place))),
  );

test("pages lie in the middle where nothing speaks against it", () => {
  expect(chooseOffset(300, { count: 2, stepMm: 170, keepWhole: [] })).toBe(-20);
});

test("a joint in the middle is slid off a line that runs there, as far as is enough", () => {
  const start = chooseOffset(300, { count: 2, stepMm: 170, keepWhole: [150] });
  expect(distancesToJoints(start, 170, 2, [150])[0]).toBeGreaterThanOrEqual(15);
  expect(start).toBeLessThanOrEqual(0);
  expect(start + 2 * 170).toBeGreaterThanOrEqual(300);
});

test("with too little to slide by, it keeps as clear as it can and still covers all", () => {
  const start = chooseOffset(334, { count: 2, stepMm: 170, keepWhole: [167] });
  expect(distancesToJoints(start, 170, 2, [167])[0]).toBe(3);
  expect(start).toBeLessThanOrEqual(0);
  expect(start + 2 * 170).toBeGreaterThanOrEqual(334);
});

test("one page has no joint", () => {
  expect(chooseOffset(100, { count: 1, stepMm: 170, keepWhole: [50] })).toBe(-35);
});
