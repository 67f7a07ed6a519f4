import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { takeTurn } from "./takeTurn";

let nowMs = 0;
const done: string[] = [];

beforeEach(() => {
  vi.useFakeTimers();
  vi.spyOn(performance, "now").mockImplementation(() => nowMs);
  done.length = 0;
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.useRealTimers();
});

/** A piece of work that takes so long. */
const work = (name: string, tookMs: number) => () => {
  nowMs += tookMs;
  done.push(name);
};

test("work is done in its order: what is slow in a slice of its own, what is quick together", () => {
  for (const [name, tookMs] of [
    ["a", 50],
    ["b", 1],
    ["c", 1],
    ["d", 50],
    ["e", 1],
  ] as const)
    takeTurn(work(name, tookMs));
  expect(done).toEqual([]);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(["a"]);
  vi.advanceTimersToNextTimer();
  expect(done).toEqual(["a", "b", "c", "d"]);
  vi.runAllTimers();
  expect(done).toEqual(["a", "b", "c", "d", "e"]);
});

test("what was taken out of the row is not done, and what comes when the row was empty is", () => {
  takeTurn(work("a", 50));
  const leave = takeTurn(work("b", 1));
  leave();
  vi.runAllTimers();
  takeTurn(work("c", 1));
  vi.runAllTimers();
  expect(done).toEqual(["a", "c"]);
});

test("one piece that fails holds up none of the others", () => {
  takeTurn(() => {
    throw new Error("no such place");
  });
  takeTurn(work("b", 1));
  expect(() => vi.runAllTimers()).toThrow("no such place");
  vi.runAllTimers();
  expect(done).toEqual(["b"]);
});
