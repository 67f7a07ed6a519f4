import { describe, expect, test } from "vitest";
import type { DimensionItem } from "./Drawing";
import { layOutDimension } from "./layOutDimension";

const along: DimensionItem = {
  kind: "dimension",
  measures: "x",
  from: { x: 10, y: 20 },
  to: { x: 90, y: 24 },
  lineAt: 40,
  text: "80",
  sizeMm: 3.5,
};

function parts(item: DimensionItem) {
  const laid = layOutDimension(item);
  return {
    lines: laid.flatMap((part) => (part.kind === "line" ? [part] : [])),
    heads: laid.flatMap((part) => (part.kind === "hatch" ? [part] : [])),
    texts: laid.flatMap((part) => (part.kind === "text" ? [part] : [])),
  };
}

describe("layOutDimension, after ISO 129-1 (from memory)", () => {
  test("extension lines stand off the feature and pass the dimension line", () => {
    const [first, second] = parts(along).lines;
    expect(first?.from).toEqual({ x: 10, y: 21 });
    expect(second?.from).toEqual({ x: 90, y: 25 });
    expect(first?.to.y).toBeGreaterThan(40);
  });

  test("the dimension line is thin and runs between them, its heads touching the extension lines from inside", () => {
    const { lines, heads } = parts(along);
    const line = lines.at(-1);
    expect(line).toMatchObject({ pen: "thin", from: { x: 10, y: 40 }, to: { x: 90, y: 40 } });
    expect(heads.map((head) => head.points[0])).toEqual([
      { x: 10, y: 40 },
      { x: 90, y: 40 },
    ]);
    expect(heads[0]?.points[1]?.x).toBeGreaterThan(10);
    expect(heads[1]?.points[1]?.x).toBeLessThan(90);
  });

  test("the figure stands above the middle of the line", () => {
    const [text] = parts(along).texts;
    expect(text).toMatchObject({ text: "80", anchor: "middle", turnRad: 0 });
    expect(text?.at.x).toBe(50);
    expect(text?.at.y).toBeLessThan(40);
  });

  test("upright, it reads from the right of the sheet and stands left of its line", () => {
    const { texts, lines } = parts({
      ...along,
      measures: "y",
      from: { x: 50, y: 10 },
      to: { x: 50, y: 90 },
      lineAt: 30,
    });
    expect(texts[0]?.turnRad).toBe(-Math.PI / 2);
    expect(texts[0]?.at.x).toBeLessThan(30);
    expect(texts[0]?.at.y).toBe(50);
    expect(lines.at(-1)?.from.x).toBe(30);
  });

  test("where there is no room between the extension lines, heads and figure stand outside", () => {
    const { heads, texts, lines } = parts({ ...along, to: { x: 13, y: 20 } });
    expect(heads[0]?.points[1]?.x).toBeLessThan(10);
    expect(heads[1]?.points[1]?.x).toBeGreaterThan(13);
    expect(texts[0]?.at.x).toBeGreaterThan(13);
    expect(lines.at(-1)?.to.x).toBeGreaterThan(texts[0]?.at.x ?? Number.POSITIVE_INFINITY);
  });
});
