import { describe, expect, it } from "vitest";
import { findNearest, listNearest } from "./findNearest";

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

describe("listNearest", () => {
  it("names the nearest first, and as many as were asked for", () => {
    expect(listNearest("poliester", ["epoxy", "sunlight", "polyester"], 1)).toEqual(["polyester"]);
    expect(listNearest("e136", ["s-203", "e-136", "e-203"])).toEqual(["e-136", "e-203", "s-203"]);
  });

  it("has an answer for any word", () => {
    expect(listNearest("t".repeat(5000), ["pu-48", "eps-20"])).toHaveLength(2);
    expect(listNearest("x", [])).toEqual([]);
  });
});
