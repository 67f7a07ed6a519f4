import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { afterPress, followPresses } from "./afterPress";

const page = new EventTarget();
followPresses(page);

const done: string[] = [];
const happens = (kind: string) => page.dispatchEvent(new Event(kind));

beforeEach(() => {
  vi.useFakeTimers();
  done.length = 0;
});
afterEach(() => {
  vi.runAllTimers();
  vi.useRealTimers();
});

test("without a press the work is done at once, after what is under way", () => {
  afterPress(() => done.push("work"));
  expect(done).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(done).toEqual(["work"]);
});

test("a finger's click comes after the finger is gone: the work waits for it", () => {
  happens("pointerdown");
  happens("pointerup");
  afterPress(() => done.push("work"));
  vi.advanceTimersByTime(20);
  expect(done).toEqual([]);
  done.push("click");
  happens("click");
  vi.advanceTimersByTime(1);
  expect(done).toEqual(["click", "work"]);
});

test.each([
  ["a drag is given over to scrolling", ["pointerdown", "pointercancel"], 0],
  ["a drag has no click", ["pointerdown", "pointerup"], 350],
  ["a finger's end is never told", ["pointerdown"], 2000],
])("%s: the work is done all the same", (_, kinds, withinMs) => {
  for (const kind of kinds) happens(kind);
  afterPress(() => done.push("work"));
  vi.advanceTimersByTime(withinMs);
  vi.advanceTimersByTime(1);
  expect(done).toEqual(["work"]);
});
