import { describe, expect, it } from "vitest";
import { findNearest } from "./findNearest";

const FIELDS = ["fromTail", "fromNose", "left", "right", "width", "thickness", "rocker"];

describe("findNearest", () => {
  it.each([
    ["thicknes", "thickness"],
    ["thickness ", "thickness"],
    ["from-tail", "fromTail"],
    ["From Tail", "fromTail"],
    ["fromtial", "fromTail"],
    ["widht", "width"],
    ["rihgt", "right"],
    ["lef", "left"],
  ])("%j was meant to be %s", (word, expected) => {
    expect(findNearest(word, FIELDS)).toBe(expected);
  });

  it.each(["colour", "", "x", "t".repeat(5000)])("%j was meant to be none of them", (word) => {
    expect(findNearest(word, FIELDS)).toBeNull();
  });
});
