import { describe, expect, test } from "vitest";
import { developAlong } from "../../src/paper/template/developAlong";
import { PAPER_BOARDS } from "./paperBoards";

/** The figure for drawings. */
const WITHIN_M = 0.00001;

describe.each(PAPER_BOARDS)("$id, along the bottom", ({ plan }) => {
  const { shape, finset } = plan;
  if (shape === null || finset === null) throw new Error("the plan has no fins");
  /** Pairs of straight and tape that the engine reckoned by itself, at places that are no point of the profile. */
  const pairs = finset.marks.flatMap(({ trailing, leading, box }) => [
    [trailing.fromTailM, trailing.fromTailTapeM] as const,
    [leading.fromTailM, leading.fromTailTapeM] as const,
    ...(box === null ? [] : [[box.frontFromTailM, box.frontFromTailTapeM] as const]),
  ]);

  test("hits the plan's marks", () => {
    const develop = developAlong(shape, finset);
    for (const [straightM, tapeM] of pairs) expect(develop(straightM)).toBeCloseTo(tapeM, 12);
  });

  test("keeps to the engine's own curve between the plan's points", () => {
    const develop = developAlong(shape, null);
    for (const [straightM, tapeM] of pairs)
      expect(Math.abs(develop(straightM) - tapeM)).toBeLessThan(WITHIN_M);
  });

  test("runs from the tail to the nose, and only forwards", () => {
    const develop = developAlong(shape, finset);
    expect(develop(0)).toBe(0);
    expect(develop(shape.lengthM)).toBeCloseTo(shape.lengthTapeM, 9);
    const places = Array.from({ length: 1001 }, (_, i) => develop((i / 1000) * shape.lengthM));
    expect(places.every((place, i) => i === 0 || place > (places[i - 1] ?? 0))).toBe(true);
  });
});
