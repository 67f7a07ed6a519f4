import { expect, test } from "vitest";
import { wrapToWidth } from "./wrapToWidth";

const byLetter = (text: string) => [...text].length;

test.each([
  ["", 5, []],
  ["one", 5, ["one"]],
  ["one two", 7, ["one two"]],
  ["one two three", 7, ["one two", "three"]],
  ["  spaces \n and   ends ", 6, ["spaces", "and", "ends"]],
  ["abcdefgh ij", 3, ["abc", "def", "gh", "ij"]],
  ["ab cdefgh", 4, ["ab", "cdef", "gh"]],
  ["😀😀😀", 2, ["😀😀", "😀"]],
  ["wide", 0, ["w", "i", "d", "e"]],
])("%j in %i becomes %j", (text, width, lines) => {
  expect(wrapToWidth(text, width, byLetter)).toEqual(lines);
});
