import { expect, test } from "vitest";
import { statedTailWord, tailWord } from "./tailWords";

const line = {
  atTailM: 0,
  atNoseM: 0,
  skewRad: 0,
  noseFromTailM: 1.8,
  crotchFromTailM: null,
  fromTailBy: "tape",
  fromTailOf: "tips",
} as const;
const swallow = { ...line, crotchFromTailM: 0.1 } as const;

test("a tail with one end is the tail", () => {
  expect(tailWord(line)).toBe("tail");
  expect(statedTailWord(line)).toBe("tail");
  expect(statedTailWord({ ...line, fromTailBy: "straight" })).toBe("tail, straight");
});

test("a swallow tail has tips and a crotch, and each is named", () => {
  expect(tailWord(swallow)).toBe("tips");
  expect(statedTailWord(swallow)).toBe("tips");
  expect(statedTailWord({ ...swallow, fromTailOf: "crotch" })).toBe("crotch");
  expect(statedTailWord({ ...swallow, fromTailOf: "crotch", fromTailBy: "straight" })).toBe(
    "crotch, straight",
  );
});
