import type { Plan } from "@lapline/engine";
import type { DimensionItem, Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { finName } from "../words/finName";
import { isAtLeftOfSheet } from "./finDimensions";
import type { FinMark } from "./finMarkItems";
import { type Lay, placeOnBoard } from "./Lay";

/** Numbers of the findings that concern a fin, by the fin's name. */
export type FinFlags = ReadonlyMap<string, string>;

interface NameRoom {
  readonly lay: Lay;
  readonly textMm: number;
  readonly flags: FinFlags;
  readonly reader: Reader;
  /** Dimensions across the board, whose figures the names keep clear of. */
  readonly figures: readonly DimensionItem[];
}

/** A strip of the sheet from edge to edge that words stand in. */
interface Strip {
  readonly topMm: number;
  readonly footMm: number;
  /** Left of the set-out line as the sheet is read, or right of it. */
  readonly isLeft: boolean;
}

/** Of each pair one fin's name, between its base and the line, and under it on tape the findings that concern it. */
export function nameItems(finset: NonNullable<Plan["finset"]>, room: NameRoom): readonly Item[] {
  const taken: Strip[] = room.figures.map(({ lineAt, sizeMm, from, to }) => ({
    topMm: lineAt - FIGURE_EM * sizeMm,
    footMm: lineAt,
    isLeft: to.x < from.x,
  }));
  const marks = finset.marks.filter(isAtLeftOfSheet(finset));
  return marks.flatMap((mark) => {
    const { strip, items } = nameOf(mark, { ...room, share: shareOf(mark, marks), taken });
    taken.push(strip);
    return items;
  });
}

/** How far out a pair's name stands, as a share of its mark's way: nearer to the line where strings of pairs further in run by. */
const shareOf = ({ trailing }: FinMark, marks: readonly FinMark[]): number =>
  marks.some(({ side, trailing: { at } }) => side !== "centre" && Math.abs(at.yM) < Math.abs(trailing.at.yM))
    ? 0.3
    : 0.5;

/** How far a figure reaches over its own line. */
const FIGURE_EM = 1.1;

function nameOf(
  { fin, side, trailing, leading, box }: FinMark,
  {
    lay,
    textMm,
    flags,
    reader,
    share,
    taken,
  }: NameRoom & { readonly share: number; readonly taken: readonly Strip[] },
): { readonly strip: Strip; readonly items: readonly Item[] } {
  const isCentre = side === "centre";
  const flag = flags.get(fin);
  const inM = trailing.at.yM * (isCentre ? 1 : share);
  const beside = isCentre ? 2 + ((box?.widthM ?? 0) / 2) * lay.mmPerM : 0;
  const [foot, head] = [trailing, leading].map(({ at }) => placeOnBoard(lay, at.xM, inM)) as [Point, Point];
  const strip = freeStrip(
    { topMm: head.y, footMm: foot.y, isLeft: side === "right" },
    textMm * (flag === undefined ? 1 : 2.6),
    taken,
  );
  const at = { x: (foot.x + head.x) / 2 + beside, y: strip.topMm + textMm * 0.8 };
  const anchor = isCentre ? "start" : "middle";
  return {
    strip,
    items: [
      { kind: "text", text: finName(fin, reader), at, anchor, sizeMm: textMm, role: "note", tone: "soft" },
      ...(flag === undefined
        ? []
        : flagItems(flag, { at: { x: at.x, y: at.y + textMm * 1.5 }, anchor, textMm })),
    ],
  };
}

/** How finely a free place is looked for. */
const SOUGHT_MM = 0.5;

/** The strip of a height nearest to the middle of a span that nothing is in; the middle where there is none within the span and a half more. */
function freeStrip({ topMm, footMm, isLeft }: Strip, tallMm: number, taken: readonly Strip[]): Strip {
  const middleMm = (topMm + footMm) / 2;
  const stripAt = (awayMm: number): Strip => ({
    topMm: middleMm + awayMm - tallMm / 2,
    footMm: middleMm + awayMm + tallMm / 2,
    isLeft,
  });
  const isFree = (strip: Strip): boolean =>
    taken.every(
      (other) => other.isLeft !== strip.isLeft || other.footMm <= strip.topMm || other.topMm >= strip.footMm,
    );
  for (let awayMm = 0; awayMm <= footMm - topMm; awayMm += SOUGHT_MM) {
    const free = [stripAt(-awayMm), stripAt(awayMm)].find(isFree);
    if (free !== undefined) return free;
  }
  return stripAt(0);
}

interface FlagPlace {
  readonly at: Point;
  readonly anchor: "start" | "middle";
  readonly textMm: number;
}

/** A piece of tape with the numbers of what was found here. */
function flagItems(text: string, { at, anchor, textMm }: FlagPlace): readonly Item[] {
  const wide = estimateTextWidthMm(text, textMm) + 2;
  const left = anchor === "middle" ? at.x - wide / 2 : at.x - 1;
  const [top, bottom] = [at.y - textMm, at.y + textMm * 0.3];
  return [
    {
      kind: "hatch",
      hatch: "tape",
      points: [
        { x: left, y: top },
        { x: left + wide, y: top },
        { x: left + wide, y: bottom },
        { x: left, y: bottom },
      ],
    },
    { kind: "text", text, at, anchor, sizeMm: textMm, role: "title" },
  ];
}
