import { describe, expect, test } from "vitest";
import { findCrosses, type JoinedPage, joinPages } from "./joinPages";
import { makePdf } from "./makePdf";
import { darkRuns } from "./measurePicture";
import { PAPER_BOARDS } from "./paperBoards";
import { farthestOff, planMarks } from "./planMarks";
import { type Picture, renderPage } from "./poppler";
import { type Place, readPdf } from "./readPdf";

/** The figure. */
const WITHIN_MM = 0.2;
const EXACT_MM = 0.01;
/** Both arms of a fin mark's cross together, and the ring around its middle. */
const MARK_MM = 10;
const RING_MM = 2;

const marksOn = ({ page }: JoinedPage): readonly Place[] =>
  findCrosses(page.segments, MARK_MM).filter((cross) =>
    page.rounds.some(
      ({ centre, radiusMm }) =>
        Math.abs(radiusMm - RING_MM) < 0.01 && Math.hypot(centre.x - cross.x, centre.y - cross.y) < 0.001,
    ),
  );

/** One place for each mark, although those near a joint stand on two pages. */
function mergeMarks(places: readonly Place[]): readonly Place[] {
  return places.filter((place, i) =>
    places.slice(0, i).every(({ x, y }) => Math.hypot(x - place.x, y - place.y) >= WITHIN_MM),
  );
}

describe.each(PAPER_BOARDS)("$id, pages joined by their trim marks", ({ plan }) => {
  test.each(["a4", "letter", "a3"] as const)(
    "on %s: every fin mark is where the plan has it",
    async (paper) => {
      const pages = joinPages(await readPdf(await makePdf(plan, { of: "fins", paper })));
      const places = pages.flatMap((joined) =>
        marksOn(joined).map(({ x, y }) => ({ x: x + joined.shift.x, y: y + joined.shift.y })),
      );
      expect(farthestOff(mergeMarks(places), planMarks(plan))).toBeLessThan(EXACT_MM);
    },
  );

  test("as poppler prints them on a4 at 300 dpi", async () => {
    const pdf = await makePdf(plan, { of: "fins", paper: "a4" });
    const pages = joinPages(await readPdf(pdf));
    const pictures = new Map(pages.map(({ number }) => [number, renderPage(pdf, number)]));
    const printed = joinPages(
      pages.map((joined) => ({ ...joined.page, segments: crossesIn(pictures, joined) })),
    );
    const places = pages.flatMap((joined) => {
      const shift = printed.find(({ column, row }) => column === joined.column && row === joined.row)?.shift;
      const picture = pictures.get(joined.number);
      if (shift === undefined || picture === undefined) throw new Error("a page was lost");
      return marksOn(joined)
        .map((mark) => printedMark(picture, mark))
        .map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }));
    });
    expect(farthestOff(mergeMarks(places), planMarks(plan))).toBeLessThan(WITHIN_MM);
  });
});

test("with a printer that is off, the pages as it prints them join to the plan's marks", async () => {
  const [board] = PAPER_BOARDS;
  if (board === undefined) throw new Error("no board");
  const printer = { x: 0.985, y: 1.01 };
  const rulerReads = { acrossMm: 98.5, upMm: 101 };
  const pages = await readPdf(await makePdf(board.plan, { of: "fins", paper: "a4", rulerReads }));
  const shrink = ({ x, y }: Place): Place => ({ x: x * printer.x, y: y * printer.y });
  const printed = pages.map((page) => ({
    ...page,
    segments: page.segments.map((segment) => ({
      ...segment,
      from: shrink(segment.from),
      to: shrink(segment.to),
    })),
    rounds: page.rounds.map((round) => ({
      centre: shrink(round.centre),
      radiusMm: round.radiusMm * printer.x,
    })),
  }));
  const places = joinPages(printed).flatMap((joined) =>
    marksOn(joined).map(({ x, y }) => ({ x: x + joined.shift.x, y: y + joined.shift.y })),
  );
  expect(farthestOff(mergeMarks(places), planMarks(board.plan))).toBeLessThan(EXACT_MM);
});

/** The trim crosses of a page as they are seen in its picture, as strokes again. */
function crossesIn(pictures: ReadonlyMap<number, Picture>, { number, crosses, page }: JoinedPage) {
  const picture = pictures.get(number);
  const [stroke] = page.segments;
  if (picture === undefined || stroke === undefined) throw new Error(`page ${number} was not printed`);
  const seen = [crosses.left, crosses.right].flatMap((x) =>
    [crosses.top, crosses.foot].map((y) => ({
      // Read off the arms where they stand free of the cut lines: outside the page's own part.
      x: lineNear(picture, { x, levels: OFF_MM.map((off) => (y === crosses.top ? y - off : y + off)) }),
      y: lineNear(picture, { y, uprights: OFF_MM.map((off) => (x === crosses.left ? x - off : x + off)) }),
    })),
  );
  return seen.flatMap(({ x, y }) => [
    { ...stroke, dashed: false, from: { x: x - 4, y }, to: { x: x + 4, y } },
    { ...stroke, dashed: false, from: { x, y: y - 4 }, to: { x, y: y + 4 } },
  ]);
}

const OFF_MM = [1.8, 2.1, 2.4, 2.7, 3];

/** A fin mark as it is seen: its height by the level arm, its place across by both sides of its ring. */
function printedMark(picture: Picture, { x, y }: Place): Place {
  const off = OFF_MM.map((each) => each + 0.8);
  const across = [-1.3, -1, -0.7, 0.7, 1, 1.3].map((down) => {
    const half = Math.sqrt(RING_MM ** 2 - down ** 2);
    const levels = [y + down];
    return (lineNear(picture, { x: x - half, levels }) + lineNear(picture, { x: x + half, levels })) / 2;
  });
  return {
    x: median(across),
    y: lineNear(picture, { y, uprights: [...off.map((each) => x - each), ...off.map((each) => x + each)] }),
  };
}

/** Farther from where it belongs no line is taken for the one that is looked for. */
const NEAR_MM = 0.4;

type Look =
  | { readonly x: number; readonly levels: readonly number[] }
  | { readonly y: number; readonly uprights: readonly number[] };

/** Where a line is seen near a place, by the middle one of what several cuts across it show. */
function lineNear(picture: Picture, look: Look): number {
  const place = "x" in look ? look.x : look.y;
  const span = { from: place - 1, to: place + 1 };
  const cuts =
    "x" in look ? look.levels.map((level) => ({ level })) : look.uprights.map((upright) => ({ upright }));
  const seen = cuts.flatMap((cut) =>
    darkRuns(picture, { ...cut, ...span }).filter((run) => Math.abs(run - place) < NEAR_MM),
  );
  return seen.length === 0 ? Number.NaN : median(seen);
}

function median(values: readonly number[]): number {
  const sorted = values.filter((value) => !Number.isNaN(value)).toSorted((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)];
  if (middle === undefined) throw new Error("no line where one was expected");
  return middle;
}
