import { expect, test } from "vitest";
import { suggestNearest } from "./suggestNearest";

const KNOWN = ["plan", "check", "why", "demo", "serve"];

test.each([
  ["pln", "plan"],
  ["paln", "plan"],
  ["PLAN", "plan"],
  ["sevre", "serve"],
  ["chek", "check"],
  ["demos", "demo"],
])("takes %s for a slip of %s", (word, meant) => {
  expect(suggestNearest(word, KNOWN)).toBe(` Did you mean ${meant}?`);
});

test.each(["", "x", "sheet", "template", "calendar"])("does not guess at %j", (word) => {
  expect(suggestNearest(word, KNOWN)).toBe("");
});
