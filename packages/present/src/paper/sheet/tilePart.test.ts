import { describe, expect, test } from "vitest";
import type { Drawing, Item } from "../../drawing/Drawing";
import type { TemplatePart } from "../template/Template";
import { tilePart } from "./tilePart";

const A4 = { widthMm: 210, heightMm: 297 };

function partOf(widthMm: number, heightMm: number, items: readonly Item[]): TemplatePart {
  const nought = { x: 0, y: 0 };
  const frame = { origin: nought, alongMmPerM: nought, acrossMmPerM: nought };
  const drawing: Drawing = { widthMm, heightMm, frame, notes: [], layers: [{ id: "all", items }] };
  return { id: "part", title: "Part", drawing, keepWhole: { x: [], y: [] } };
}

const line = (x1: number, y1: number, x2: number, y2: number): Item => ({
  kind: "line",
  pen: "thin",
  from: { x: x1, y: y1 },
  to: { x: x2, y: y2 },
});

describe("tiles", () => {
  test("cover the drawing without gap or overlap", () => {
    const tiling = tilePart(partOf(500, 700, [line(0, 0, 500, 700), line(0, 700, 500, 0)]), A4);
    const { grid, columns, rows, page, tiles } = tiling;
    expect(grid.x).toBeLessThanOrEqual(0);
    expect(grid.y).toBeLessThanOrEqual(0);
    expect(grid.x + columns * page.net.widthMm).toBeGreaterThanOrEqual(500);
    expect(grid.y + rows * page.net.heightMm).toBeGreaterThanOrEqual(700);
    for (const { net, column, row } of tiles) {
      expect(net.x).toBeCloseTo(grid.x + column * page.net.widthMm, 9);
      expect(net.y).toBeCloseTo(grid.y + row * page.net.heightMm, 9);
    }
  });

  test("with nothing on them are left out, and nobody is sent to them", () => {
    const { tiles, columns, rows } = tilePart(
      partOf(900, 900, [line(2, 2, 898, 2), line(898, 2, 898, 898)]),
      A4,
    );
    expect(tiles.length).toBeLessThan(columns * rows);
    const names = tiles.map(({ name }) => name);
    for (const { neighbours } of tiles) {
      for (const name of Object.values(neighbours)) expect(names).toContain(name);
    }
    expect(tiles.some(({ neighbours }) => neighbours.below === undefined)).toBe(true);
  });

  test("point to each other", () => {
    const { tiles } = tilePart(partOf(500, 700, [line(0, 0, 500, 700), line(0, 700, 500, 0)]), A4);
    for (const tile of tiles) {
      const right = tiles.find(({ name }) => name === tile.neighbours.right);
      if (tile.neighbours.right !== undefined) expect(right?.neighbours.left).toBe(tile.name);
    }
  });

  test("are turned where that takes fewer", () => {
    const lying = tilePart(partOf(240, 120, [line(0, 0, 240, 120)]), A4);
    expect(lying.tiles.map(({ name }) => name)).toEqual(["A1"]);
    expect(lying.page.widthMm).toBe(297);
    expect(tilePart(partOf(120, 240, [line(0, 0, 120, 240)]), A4).page.widthMm).toBe(210);
  });

  test("are named on past Z", () => {
    const small = { widthMm: 120, heightMm: 121 };
    const names = tilePart(partOf(5_000, 60, [line(0, 30, 5_000, 30)]), small).tiles.map(({ name }) => name);
    expect(names.slice(24, 29)).toEqual(["Y1", "Z1", "AA1", "AB1", "AC1"]);
    expect(new Set(names).size).toBe(names.length);
  });
});
