import { describe, expect, test } from "vitest";
import type { Drawing, Item, Point, TextItem } from "../../src/drawing/Drawing";
import { layOutDimension } from "../../src/drawing/layOutDimension";
import { quadsMeet } from "../../src/drawing/textQuad";
import { createTypesetter } from "../../src/paper/pdf/renderPdf";
import { PAGE_SIZES } from "../../src/paper/sheet/PaperSize";
import { tilePart } from "../../src/paper/sheet/tilePart";
import { wholeTexts, windowOf } from "../../src/paper/sheet/wholeTexts";
import { buildTemplate } from "../../src/paper/template/buildTemplate";
import { ARRANGED_BOARDS, PAPER_BOARDS } from "./paperBoards";

const type = createTypesetter();
const KINDS = ["fins", "outline", "cloth"] as const;
const PAPERS = ["a4", "letter", "a3"] as const;
/** The longer words with the shorter figures and the other way around. */
const READERS = [
  { units: "inch", language: "en" },
  { units: "mm", language: "de" },
] as const;
const BOARDS = [...PAPER_BOARDS, ...ARRANGED_BOARDS];
const CASES = BOARDS.flatMap((board) =>
  READERS.flatMap((reader) => KINDS.map((of) => ({ board, reader, of }))),
).map((each) => ({
  ...each,
  name: `${each.board.id}, ${each.of}, ${each.reader.units}, ${each.reader.language}`,
}));

const HEIGHT = 0.7;
const BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/** The room that a text takes as the font sets it, turned as it is. */
function setQuad({ at, text, sizeMm, anchor, role, turnRad = 0 }: TextItem): readonly Point[] {
  const widthMm = type.widthMm(text, { sizeMm, weight: role === "note" ? 400 : 600 });
  const from = -BEFORE[anchor] * widthMm;
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
  return [
    [from, -HEIGHT * sizeMm],
    [from + widthMm, -HEIGHT * sizeMm],
    [from + widthMm, 0],
    [from, 0],
  ].map(([along = 0, down = 0]) => ({
    x: at.x + along * cos - down * sin,
    y: at.y + along * sin + down * cos,
  }));
}

const textsOf = ({ layers }: Drawing): readonly TextItem[] =>
  layers.flatMap(({ items }) =>
    items
      .flatMap((item): readonly Item[] => (item.kind === "dimension" ? layOutDimension(item) : [item]))
      .flatMap((item) => (item.kind === "text" && item.text !== "" ? [item] : [])),
  );

function meetings(drawing: Drawing): readonly string[] {
  const set = textsOf(drawing).map((item) => ({ item, quad: setQuad(item) }));
  return set.flatMap((a, i) =>
    set
      .slice(i + 1)
      .filter((b) => quadsMeet(a.quad, b.quad))
      .map((b) => `${a.item.text} | ${b.item.text}`),
  );
}

describe.each(CASES)("$name", ({ board, reader, of }) => {
  const parts = buildTemplate(board.plan, { of, reader })?.parts ?? [];

  test("no words stand on others, on one long sheet", () => {
    expect(parts.length).toBeGreaterThan(0);
    for (const { drawing } of parts) expect(meetings(drawing)).toEqual([]);
  });

  test.each(PAPERS)("on %s each text is whole on a page, and none was moved onto another", (paper) => {
    for (const part of parts) {
      const tiling = tilePart(part, PAGE_SIZES[paper]);
      const shown = wholeTexts(part.drawing, tiling);
      const texts = textsOf(shown);
      expect(texts.map(({ text }) => text)).toEqual(textsOf(part.drawing).map(({ text }) => text));
      const windows = tiling.tiles.map(({ net }) => windowOf(tiling, net));
      const cut = texts.filter(
        (item) =>
          !windows.some(({ x, y, widthMm, heightMm }) =>
            setQuad(item).every(
              (corner) =>
                corner.x >= x && corner.x <= x + widthMm && corner.y >= y && corner.y <= y + heightMm,
            ),
          ),
      );
      expect(cut.map(({ text }) => text)).toEqual([]);
      expect(meetings(shown)).toEqual([]);
    }
  });
});
