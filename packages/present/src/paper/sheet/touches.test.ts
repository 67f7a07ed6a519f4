import { describe, expect, test } from "vitest";
import type { Item } from "../../drawing/Drawing";
import { touches } from "./touches";

const RECT = { x: 100, y: 100, widthMm: 50, heightMm: 40 };
const line = (x1: number, y1: number, x2: number, y2: number): Item => ({
  kind: "line",
  pen: "thin",
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});
const text = (x: number, y: number, turnRad = 0): Item => ({
  kind: "text",
  at: { x, y },
  text: "ten letters",
  sizeMm: 4,
  anchor: "start",
  role: "note",
  turnRad,
});

describe("what shows within a rectangle", () => {
  test.each([
    ["a line through it, from far outside to far outside", line(0, 0, 300, 240)],
    ["a line along its edge", line(100, 0, 100, 300)],
    ["a line within", line(110, 110, 120, 120)],
    ["a closed area whose last side alone crosses it", closed([80, 90], [80, 200], [300, 200], [300, 90])],
    ["a text that runs into it", text(90, 120)],
    ["a text that runs up into it", text(120, 150, -Math.PI / 2)],
    ["a circle around its corner", circle(95, 95, 8)],
  ])("%s", (_, item) => {
    expect(touches(item, RECT)).toBe(true);
  });

  test.each([
    ["a line that passes its corner", line(0, 180, 180, 0)],
    ["a line beside it", line(160, 0, 160, 300)],
    ["an open path around it", open([80, 90], [80, 200], [300, 200], [300, 90])],
    ["a text that runs away from it", text(155, 120)],
    ["a text that runs up beside it", text(90, 150, -Math.PI / 2)],
    ["a circle beyond", circle(80, 80, 8)],
  ])("not %s", (_, item) => {
    expect(touches(item, RECT)).toBe(false);
  });
});

type Pair = readonly [number, number];

function open(...points: readonly Pair[]): Item {
  return { kind: "polyline", pen: "thin", closed: false, points: points.map(([x, y]) => ({ x, y })) };
}

function closed(...points: readonly Pair[]): Item {
  // The side from the last point back to the first lies at y = 120.
  const low = points.map(([x, y]) => ({ x, y: y === 90 ? 120 : y }));
  return { kind: "polyline", pen: "thin", closed: true, points: low };
}

function circle(x: number, y: number, radiusMm: number): Item {
  return { kind: "arc", pen: "thin", centre: { x, y }, radiusMm, fromRad: 0, toRad: 2 * Math.PI };
}
