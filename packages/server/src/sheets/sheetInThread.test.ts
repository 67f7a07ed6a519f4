import { expect, test } from "vitest";
import type { SheetMade, SheetTask } from "./SheetTask";
import { LONGEST_SHEET_MS, openSheetThread } from "./sheetInThread";

const task = (text: string): SheetTask => ({
  text,
  paper: "a4",
  reader: { units: "mm", language: "en" },
  madeOn: { instant: new Date(0), date: "1970-01-01" },
});
const MADE: SheetMade = { kind: "made", plan: new Uint8Array([1]), pdf: new Uint8Array([2]) };

/** Threads that end when the test says so, and a clock that it moves. */
function openByHand() {
  const started: {
    text: string;
    isEnded: boolean;
    finish(made: SheetMade): void;
    fail(error: Error): void;
  }[] = [];
  const clocks: { ms: number; isOff: boolean; ring(): void }[] = [];
  const make = openSheetThread({
    start({ text }) {
      let [finish, fail]: [(made: SheetMade) => void, (error: Error) => void] = [() => {}, () => {}];
      const made = new Promise<SheetMade>((resolve, reject) => {
        [finish, fail] = [resolve, reject];
      });
      const thread = { text, isEnded: false, finish, fail };
      started.push(thread);
      const end = async () => {
        thread.isEnded = true;
      };
      return { made, end };
    },
    after(ms, call) {
      const clock = { ms, isOff: false, ring: call };
      clocks.push(clock);
      return () => {
        clock.isOff = true;
      };
    },
  });
  return { make, started, clocks };
}

const turn = () => new Promise((resolve) => setImmediate(resolve));

test("one that takes too long is given up, its thread ended, and the next has a thread of its own", async () => {
  const { make, started, clocks } = openByHand();
  const [slow, next] = [make(task("slow")), make(task("next"))];
  await turn();
  expect(started.map(({ text }) => text)).toEqual(["slow"]);
  expect(clocks.map(({ ms }) => ms)).toEqual([LONGEST_SHEET_MS]);
  clocks[0]?.ring();
  expect(await slow).toEqual({ kind: "too-long" });
  expect(started[0]?.isEnded).toBe(true);
  await turn();
  expect(started.map(({ text }) => text)).toEqual(["slow", "next"]);
  started[1]?.finish(MADE);
  expect(await next).toBe(MADE);
  expect(started[1]?.isEnded).toBe(true);
  expect(clocks.map(({ isOff }) => isOff)).toEqual([true, true]);
});

test("one whose thread fails fails alone", async () => {
  const { make, started } = openByHand();
  const [broken, next] = [make(task("broken")), make(task("next"))];
  const heard = expect(broken).rejects.toThrow("out of memory");
  await turn();
  started[0]?.fail(new Error("out of memory"));
  await heard;
  await turn();
  started[1]?.finish(MADE);
  expect(await next).toBe(MADE);
});

test("ten wait at most", async () => {
  const { make, started } = openByHand();
  const waiting = Array.from({ length: 10 }, (_, i) => make(task(`${i}`)));
  expect(await make(task("one more"))).toEqual({ kind: "busy" });
  for (let i = 0; i < 10; i++) {
    await turn();
    started[i]?.finish(MADE);
    await turn();
  }
  expect(await Promise.all(waiting)).toEqual(Array(10).fill(MADE));
});
