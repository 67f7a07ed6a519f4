import { describe, expect, test } from "vitest";
import { makePdf } from "./makePdf";
import { darkRuns } from "./measurePicture";
import { PAPER_BOARDS } from "./paperBoards";
import { renderPage } from "./poppler";
import { type PdfPage, readPdf } from "./readPdf";
import { findRulers } from "./rulers";

const KINDS = ["fins", "outline", "cloth"] as const;
const PAPERS = ["a4", "letter", "a3", "roll"] as const;
/** ISO 216 and ANSI/ASME Y14.1, from memory. */
const SIZES = { a4: [210, 297], letter: [215.9, 279.4], a3: [297, 420] } as const;
/** A thousandth of a millimetre: what is left of a number written to six places in points, and read as a 32 bit one. */
const EXACT_MM = 0.001;

const [first, ...others] = PAPER_BOARDS;
if (first === undefined) throw new Error("no board");

const CASES = [
  ...KINDS.flatMap((of) => PAPERS.map((paper) => ({ ...first, of, paper }))),
  ...others.flatMap((board) =>
    (["a4", "roll"] as const).map((paper) => ({ ...board, of: "fins" as const, paper })),
  ),
];

describe("in the file", () => {
  test.each(CASES)(
    "$id, $of on $paper: 100 mm, 4 in and the square on every page",
    async ({ plan, of, paper }) => {
      const pages = await readPdf(await makePdf(plan, { of, paper }));
      for (const page of pages) {
        expectTrueRulers(page, { x: 1, y: 1 });
        if (paper === "roll") continue;
        const size = [page.widthMm, page.heightMm].toSorted((a, b) => a - b);
        expect(size.map((mm, i) => Math.abs(mm - SIZES[paper][i]!) < EXACT_MM)).toEqual([true, true]);
      }
    },
  );

  test("are larger by what the printer makes smaller, and the paper stays the paper", async () => {
    const rulerReads = { acrossMm: 99.2, upMm: 100.5 };
    const pages = await readPdf(await makePdf(first.plan, { of: "fins", paper: "a4", rulerReads }));
    for (const page of pages) {
      expectTrueRulers(page, { x: 0.992, y: 1.005 });
      expect(Math.min(page.widthMm, page.heightMm)).toBeCloseTo(210, 2);
      expect(page.texts.map(({ text }) => text).join(" ")).toContain("100 mm as 99.2 mm across, 100.5 mm up");
    }
  });
});

/** The rulers as this printer prints them. */
function expectTrueRulers(page: PdfPage, printer: { readonly x: number; readonly y: number }): void {
  const { level, upright } = findRulers(page);
  for (const [ruler, scale] of [
    [level, printer.x],
    [upright, printer.y],
  ] as const) {
    expect(Math.abs(ruler.hundredMm * scale - 100)).toBeLessThan(EXACT_MM);
    expect(Math.abs(ruler.fourInchesMm * scale - 101.6)).toBeLessThan(EXACT_MM);
    expect(Math.abs(ruler.lengthMm * scale - 101.6)).toBeLessThan(EXACT_MM);
  }
  const corner = [level.line.from, upright.line.from];
  expect(Math.hypot(corner[0]!.x - corner[1]!.x, corner[0]!.y - corner[1]!.y)).toBeLessThan(EXACT_MM);
  const across = Math.hypot(level.checkedMm * printer.x, upright.checkedMm * printer.y);
  expect(Math.abs(across - 100)).toBeLessThan(EXACT_MM);
}

describe("printed by poppler at 300 dpi", () => {
  /** The figure; a pixel is 0.085 mm, and the grey of its edges places a line more finely. */
  const WITHIN_MM = 0.1;

  test.each(PAPER_BOARDS.map((board) => ({ ...board })))(
    "$id: the rulers of every page of the fins",
    async ({ plan }) => {
      const pdf = await makePdf(plan, { of: "fins", paper: "a4" });
      const pages = await readPdf(pdf);
      pages.forEach((page, i) => {
        const picture = renderPage(pdf, i + 1);
        const { level, upright } = findRulers(page);
        const [y, x] = [level.line.from.y, upright.line.from.x];
        // Out here only the end ticks reach: lines at the ruler's own distance would cross all ticks.
        const across = { from: 5, to: 118 };
        const up = { from: y - 104, to: page.heightMm - 5 };
        const spans = [
          spanOf(darkRuns(picture, { level: y + 3.7, ...across })),
          spanOf(darkRuns(picture, { upright: x - 3.7, ...up })),
        ];
        const inches = [
          spanOf(darkRuns(picture, { level: y - 3.7, from: x - 3, to: 116 })),
          spanOf(darkRuns(picture, { upright: x + 3.7, from: y - 104, to: y + 3 })),
        ];
        for (const span of spans) expect(Math.abs(span - 100)).toBeLessThan(WITHIN_MM);
        for (const span of inches) expect(Math.abs(span - 101.6)).toBeLessThan(WITHIN_MM);
      });
    },
  );

  const spanOf = (runs: readonly number[]): number => Math.max(...runs) - Math.min(...runs);
});
