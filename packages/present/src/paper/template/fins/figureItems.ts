import type { Item, Point, TextItem } from "../../../drawing/Drawing";
import { type Tell, tell } from "../../../language/tell";
import { formatTapeLength } from "../../../words/formatTapeLength";
import { tailWord } from "../../../words/tailWords";
import { backed } from "../backed";
import { cutOutOf, type FinMark, type FinSheet, placeMark, placeOnPaper } from "./FinSheet";
import { diagonals, ENDS, type MarkEnd, type Measure, squares, strings } from "./measureItems";

const FIGURE_MM = 3.6;
const SMALL_MM = 3;

/** What each measure reads: marks from the line and from the tail, diagonals by tape, strings beside the nose. */
export function figureItems(sheet: FinSheet): readonly Item[] {
  const show = (valueM: number) => formatTapeLength(valueM, sheet.reader);
  const centre = sheet.finset.marks.filter(({ side }) => side === "centre");
  return [
    ...diagonalFigures(sheet, show),
    ...strings(sheet).map(({ mark, from, to }): TextItem => {
      const text = stringWords(mark, show, tell(sheet.reader));
      return { ...alongLine({ from, to, share: 1 }, text), anchor: "end", tone: "resin" };
    }),
    ...squares(sheet).flatMap((measure) => squareFigures(sheet, measure, show)),
    ...centre.flatMap((mark) => ENDS.map((end) => centreFigure(sheet, mark, end, show))),
  ].flatMap(backed);
}

type Show = (valueM: number) => string;

/** How far along a diagonal its figure may stand, as shares of it. */
const SHARES = Array.from({ length: 13 }, (_, i) => 0.3 + i * 0.045);

/** Each where there is most room beside marks, names and other figures. */
function diagonalFigures(sheet: FinSheet, show: Show): readonly TextItem[] {
  const taken: Point[] = [...takenPlaces(sheet)];
  return diagonals(sheet).map(({ from, to, tapeM }) => {
    const placeAt = (share: number): Point => ({
      x: from.x + share * (to.x - from.x),
      y: from.y + share * (to.y - from.y),
    });
    const roomAt = (share: number) => {
      const { x, y } = placeAt(share);
      return Math.min(...taken.map((other) => Math.hypot(other.x - x, other.y - y)));
    };
    const share = SHARES.reduce((best, each) => (roomAt(each) > roomAt(best) + 0.5 ? each : best));
    taken.push(placeAt(share));
    return alongLine({ from, to, share }, show(tapeM));
  });
}

function takenPlaces(sheet: FinSheet): readonly Point[] {
  const { marks, leashPlug } = sheet.finset;
  const squaresAt = squares(sheet).map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: from.y }));
  const basesAt = marks.flatMap((mark) => {
    const [trailing, leading] = [placeMark(sheet, mark, "trailing"), placeMark(sheet, mark, "leading")];
    return [trailing, leading, { x: (trailing.x + leading.x) / 2, y: (trailing.y + leading.y) / 2 }];
  });
  if (leashPlug === null) return [...squaresAt, ...basesAt];
  const side = leashPlug.side === "left" ? 1 : -1;
  const plug = placeOnPaper(sheet, leashPlug.fromTailM, side * leashPlug.fromCentrelineM);
  return [...squaresAt, ...basesAt, plug, { x: plug.x + side * 32, y: plug.y }];
}

/** Over the square: how far out from the line; under it: how far up from the tail. */
function squareFigures(sheet: FinSheet, { mark, end, from, to }: Measure, show: Show): readonly TextItem[] {
  const share = 0.52;
  const middle = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  const figure = { kind: "text", role: "figure", sizeMm: FIGURE_MM, anchor: "middle" } as const;
  return [
    {
      ...figure,
      at: { x: middle.x, y: middle.y - 1.2 },
      text: tell(sheet.reader)`${show(mark[end].fromCentrelineM)} from the line`,
    },
    { ...figure, at: { x: middle.x, y: middle.y + 4.2 }, text: fromTail(sheet, { mark, end, show }) },
  ];
}

/** Beside a centre fin's mark, under the word for its trailing end and over that for its leading one. */
function centreFigure(sheet: FinSheet, mark: FinMark, end: MarkEnd, show: Show): TextItem {
  const at = placeMark(sheet, mark, end);
  const clear = Math.max(5, 500 * (cutOutOf(sheet, mark)?.widthM ?? 0)) + 1.5;
  return {
    kind: "text",
    role: "figure",
    sizeMm: FIGURE_MM,
    anchor: "end",
    at: { x: at.x - clear, y: at.y + (end === "trailing" ? 8.6 : -5.4) },
    text: fromTail(sheet, { mark, end, show }),
  };
}

const fromTail = (
  { finset, reader }: FinSheet,
  { mark, end, show }: { mark: FinMark; end: MarkEnd; show: Show },
): string => tell(reader)`${show(mark[end].fromTailTapeM)} from the ${tailWord(finset.line)}`;

function stringWords({ aimBesideNoseM }: FinMark, show: Show, t: Tell): string {
  return aimBesideNoseM < 0
    ? t`string: ${show(-aimBesideNoseM)} beside the nose, over the line`
    : t`string: ${show(aimBesideNoseM)} beside the nose`;
}

/** A text that stands on a line and reads along it, from the bottom or the right of the sheet. */
function alongLine(
  { from, to, share }: { readonly from: Point; readonly to: Point; readonly share: number },
  text: string,
): TextItem {
  const angleRad = Math.atan2(to.y - from.y, to.x - from.x);
  const turnRad = angleRad < -Math.PI / 2 - 0.3 ? angleRad + Math.PI : angleRad;
  const offMm = 0.9;
  return {
    kind: "text",
    role: "note",
    sizeMm: SMALL_MM,
    anchor: "middle",
    turnRad,
    at: {
      x: from.x + share * (to.x - from.x) + offMm * Math.sin(turnRad),
      y: from.y + share * (to.y - from.y) - offMm * Math.cos(turnRad),
    },
    text,
  };
}
