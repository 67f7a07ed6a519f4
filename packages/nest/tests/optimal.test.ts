import highsLoader from "highs";
import { describe, expect, it } from "vitest";
import type { NestOrder, NestPiece } from "../src/index";
import { listFaults, nest } from "./roll";

const QUARTERS = [0, Math.PI / 2];

function rectangle(id: string, lengthM: number, widthM: number, turnsRad = QUARTERS): NestPiece {
  const points = [
    { alongM: 0, acrossM: 0 },
    { alongM: lengthM, acrossM: 0 },
    { alongM: lengthM, acrossM: widthM },
    { alongM: 0, acrossM: widthM },
  ];
  return { id, points, turnsRad };
}

/**
 * Strip packing of rectangles that may turn, as a mixed-integer programme: for each pair one of four must hold, left of, right of,
 * below or above (the usual big-M form). Solved to proof by HiGHS, which knows nothing of our search.
 */
async function solveByMilp(sizes: ReadonlyArray<readonly [number, number]>, widthM: number): Promise<number> {
  const most = sizes.reduce((sum, [a, b]) => sum + Math.max(a, b), 0);
  const rows: string[] = [];
  const binaries: string[] = [];
  sizes.forEach(([a, b], i) => {
    // Turned, the length is b and the width a.
    rows.push(`x${i} + ${b - a} r${i} - L <= ${-a}`.replace("+ -", "- "));
    rows.push(`y${i} + ${a - b} r${i} <= ${widthM - b}`.replace("+ -", "- "));
    binaries.push(`r${i}`);
    for (let j = i + 1; j < sizes.length; j++) {
      const [c, d] = sizes[j]!;
      const pair = ["l", "r", "b", "t"].map((side) => `${side}${i}${j}`);
      binaries.push(...pair);
      rows.push(`${pair.join(" + ")} >= 1`);
      const apart = (
        p: string,
        q: string,
        turn: number,
        size: number,
        which: string,
        span: number,
        r: string,
      ) =>
        rows.push(`${p} - ${q} + ${turn} ${r} + ${span} ${which} <= ${span - size}`.replaceAll("+ -", "- "));
      apart(`x${i}`, `x${j}`, b - a, a, pair[0]!, most, `r${i}`);
      apart(`x${j}`, `x${i}`, d - c, c, pair[1]!, most, `r${j}`);
      apart(`y${i}`, `y${j}`, a - b, b, pair[2]!, widthM + most, `r${i}`);
      apart(`y${j}`, `y${i}`, c - d, d, pair[3]!, widthM + most, `r${j}`);
    }
  });
  const model = `Minimize\n obj: L\nSubject To\n${rows.map((row, k) => ` c${k}: ${row}`).join("\n")}\nBinary\n ${binaries.join(" ")}\nEnd\n`;
  const highs = await highsLoader();
  const solved = highs.solve(model);
  expect(solved.Status).toBe("Optimal");
  return solved.ObjectiveValue;
}

describe("against the proven shortest", () => {
  it.each([
    [
      "five pieces that leave no gap",
      5,
      [
        [3, 2],
        [3, 3],
        [2, 4],
        [1, 2],
        [2, 1],
      ] as const,
    ],
    [
      "five pieces that leave gaps",
      7,
      [
        [5, 4],
        [4, 3],
        [3, 3],
        [6, 2],
        [2, 2],
      ] as const,
    ],
  ])("%s: as short as the mixed-integer programme's", async (_, widthM, sizes) => {
    const shortest = await solveByMilp(sizes, widthM);
    const order: NestOrder = {
      cloth: "e-136",
      widthM,
      gapM: 0,
      pieces: sizes.map(([a, b], i) => rectangle(`patch-${i}`, a, b)),
    };
    const lay = nest(order, { seed: 1, layings: 4000 });
    expect(lay.lengthM).toBeCloseTo(shortest, 6);
    expect(lay.boundM).toBeLessThanOrEqual(shortest + 1e-6);
    expect(listFaults(lay, lay.placed)).toEqual([]);
  });

  /** Right triangles along one edge: two make a rectangle, so the shortest is by arithmetic. */
  it("two wedges make a block, in the only way they can", () => {
    const wedge = (id: string): NestPiece => ({
      id,
      points: [
        { alongM: 0, acrossM: 0 },
        { alongM: 2, acrossM: 0 },
        { alongM: 0, acrossM: 0.6 },
      ],
      turnsRad: [0, Math.PI],
    });
    const lay = nest(
      { cloth: "e-136", widthM: 0.6, gapM: 0, pieces: ["a", "b", "c", "d"].map(wedge) },
      { seed: 1, layings: 2000 },
    );
    expect(lay.lengthM).toBeCloseTo(4, 6);
    expect(lay.boundM).toBeCloseTo(4, 6);
    expect(lay.usedRatio).toBeCloseTo(1, 6);
  });

  /**
   * Kites wider than half the roll lie in a row; two facing points pass by each other as far as the roll lets one move across. With
   * half-widths that fall by 0.3 m over 1 m and 0.1 m to move, each joint saves (0.1 / 0.3) m: by hand 3 × 2 - 2 / 3.
   */
  it("pointed pieces in a row pass their points, as far as by hand", () => {
    const kite = (id: string): NestPiece => ({
      id,
      points: [
        { alongM: 0, acrossM: 0.3 },
        { alongM: 1, acrossM: 0 },
        { alongM: 2, acrossM: 0.3 },
        { alongM: 1, acrossM: 0.6 },
      ],
      turnsRad: [0],
    });
    const lay = nest(
      { cloth: "e-136", widthM: 0.7, gapM: 0, pieces: ["a", "b", "c"].map(kite) },
      { seed: 1, layings: 500 },
    );
    expect(lay.boundM).toBeCloseTo(6 - 2 / 3, 6);
    expect(lay.lengthM).toBeCloseTo(6 - 2 / 3, 6);
  });
});
