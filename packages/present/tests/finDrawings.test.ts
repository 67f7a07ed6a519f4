import { DEMO_BOARDS, readBoardFile } from "@lapline/contract";
import { formatQuantity, length, type Plan, planBuild } from "@lapline/engine";
import { describe, expect, test } from "vitest";
import { asSetDrawing, checkDrawing, type Drawing, drawingToSvg } from "../src";
import { formatTapeLength } from "../src/words/formatTapeLength";
import { measureOnBoard, readPaths, readTexts } from "./readDrawing";

/** The figure for drawings on the screen: within 0.01 mm of the plan, on the board. */
const WITHIN_M = 0.00001;
const UNITS = ["inch", "mm"] as const;

function svgOf(drawing: Drawing): string {
  return drawingToSvg(drawing, { title: "t", desc: "d" });
}

function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error("expected a value");
  return value;
}

/** The quad of the demo, by any rule for its sides, with what was measured of it. */
function planOf(fins: object): Plan {
  const file = JSON.parse(present(DEMO_BOARDS[0]).text);
  const read = readBoardFile(JSON.stringify({ ...file, fins: { ...file.fins, ...fins } }));
  if (!read.ok) throw new Error("the board cannot be read");
  return planBuild(read.board);
}

describe.each(["average", "rail", "centreline"])("the check drawing, sides by %s", (sides) => {
  const plan = planOf({ sides });
  const finset = present(plan.finset);
  const shape = present(plan.shape);
  test.each(finset.pairs)(
    "$id: strings run over both marks to where the plan says, and diagonals to the marks",
    (pair) => {
      for (const units of UNITS) {
        const drawing = present(
          checkDrawing(plan, pair.id, { reader: { units, language: "en" }, widthMm: 150 }),
        );
        const svg = svgOf(drawing);
        const strings = readPaths(svg, "strings", "pen-phantom").map((path) =>
          path.map((point) => measureOnBoard(drawing, point)),
        );
        const marks = finset.marks.filter((mark) => mark.fin === pair.id);
        expect(strings).toHaveLength(marks.length);
        marks.forEach((mark, i) => {
          const [from, to] = present(strings[i]);
          const leading = mark.leading.at;
          // The leading mark lies on the string: both rises over their runs agree.
          const rise =
            (present(to).leftM - present(from).leftM) / (present(to).fromTailM - present(from).fromTailM);
          const onString = present(from).leftM + rise * (leading.xM - present(from).fromTailM);
          expect(Math.abs(onString - leading.yM)).toBeLessThan(2 * WITHIN_M);
          const texts = readTexts(svg, "crossings").map(({ text }) => text);
          expect(texts).toContain(formatTapeLength(Math.abs(mark.aimBesideNoseM), { units, language: "en" }));
        });
        const ends = readPaths(svg, "diagonals", "pen-thin").map((path) =>
          path.map((point) => measureOnBoard(drawing, point)),
        );
        expect(ends).toHaveLength(4);
        ends.forEach(([from, to], i) => {
          expect(present(from).leftM).toBeCloseTo(0, 5);
          expect(present(from).fromTailM).toBeCloseTo(i % 2 === 0 ? shape.lengthM : 0, 5);
          expect(present(to).fromTailM).toBeCloseTo(present(marks[Math.floor(i / 2)]).trailing.at.xM, 5);
        });
        const figures = readTexts(svg, "across").map(({ text }) => text);
        for (const { id, leftTapeM, rightTapeM } of pair.diagonals) {
          if (!id.endsWith("trailing")) continue;
          expect(figures).toContain(formatTapeLength(leftTapeM, { units, language: "en" }));
          expect(figures).toContain(formatTapeLength(rightTapeM, { units, language: "en" }));
        }
      }
    },
  );
});

describe("fins as set", () => {
  const asSet = [
    {
      fin: "front",
      side: "left",
      trailing: { fromTail: "292.1 mm", fromCentreline: "152 mm" },
      leading: { fromTail: "403.2 mm", fromCentreline: "148 mm" },
    },
    {
      fin: "rear",
      side: "right",
      trailing: { fromTail: "156 mm", fromCentreline: "93 mm" },
      leading: { fromTail: "251 mm", fromCentreline: "90 mm" },
    },
  ];
  const plan = planOf({ asSet });
  const finset = present(plan.finset);

  test("each end stands off its planned place by its error and the stated factor, on its own side", () => {
    const drawing = present(asSetDrawing(plan, { reader: { units: "mm", language: "en" }, widthMm: 130 }));
    const svg = svgOf(drawing);
    const [, stated] = present(/errors drawn (\d+) times/.exec(drawing.notes.join(" ")));
    const times = Number(stated);
    const lines = readPaths(svg, "as-set", "pen-thick").map((path) =>
      path.map((point) => measureOnBoard(drawing, point)),
    );
    const measured = finset.marks.filter(({ id }) => finset.asSet.some((each) => each.id === id));
    expect(lines).toHaveLength(measured.length);
    measured.forEach((mark, i) => {
      const plan = present(finset.asSet.find(({ id }) => id === mark.id));
      const out = mark.side === "left" ? 1 : -1;
      (["trailing", "leading"] as const).forEach((end, at) => {
        const point = present(lines[i]?.[at]);
        const alongM = times * present(plan[`${end}AlongM`]);
        const acrossM = times * present(plan[`${end}AcrossM`]);
        expect(Math.abs(point.fromTailM - mark[end].at.xM - alongM)).toBeLessThan(WITHIN_M);
        expect(Math.abs(point.leftM - mark[end].at.yM - out * acrossM)).toBeLessThan(WITHIN_M);
      });
    });
    expect(drawing.notes.join(" ")).toContain("the tolerance, 1.0 mm");
  });

  test.each(UNITS)("every error stands there in figures, in %s", (units) => {
    const drawing = present(asSetDrawing(plan, { reader: { units, language: "en" }, widthMm: 130 }));
    const figures = readTexts(svgOf(drawing), "across").map(({ text }) => text);
    for (const { trailingErrorM, leadingErrorM } of finset.asSet)
      for (const errorM of [trailingErrorM, leadingErrorM])
        expect(figures).toContain(formatQuantity(length(present(errorM), "fine"), units));
  });

  test("nothing measured, nothing drawn", () => {
    expect(asSetDrawing(planOf({}), { reader: { units: "mm", language: "en" }, widthMm: 130 })).toBeNull();
    expect(
      checkDrawing(planOf({}), "centre", { reader: { units: "mm", language: "en" }, widthMm: 130 }),
    ).toBeNull();
  });
});
