import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { takeTurn } from "./takeTurn";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

test("work is done in its order, each piece in a slice of its own", () => {
  const done: string[] = [];
  for (const name of ["a", "b", "c"]) takeTurn(() => done.push(name));
  expect(done).toEqual([]);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(["a"]);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(["a", "b"]);
  vi.runAllTimers();
  expect(done).toEqual(["a", "b", "c"]);
});

test("what was taken out of the row is not done, and what comes when the row was empty is", () => {
  const done: string[] = [];
  takeTurn(() => done.push("a"));
  const leave = takeTurn(() => done.push("b"));
  leave();
  vi.runAllTimers();
  takeTurn(() => done.push("c"));
  vi.runAllTimers();
  expect(done).toEqual(["a", "c"]);
});

test("one piece that fails holds up none of the others", () => {
  const done: string[] = [];
  takeTurn(() => {
    throw new Error("no such place");
  });
  takeTurn(() => done.push("b"));
  expect(() => vi.runAllTimers()).toThrow("no such place");
  vi.runAllTimers();
  expect(done).toEqual(["b"]);
});
