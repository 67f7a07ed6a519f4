import type { Item, Point } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { finName } from "../words/finName";
import type { FinMark } from "./finMarkItems";
import { type Lay, placeOnBoard } from "./Lay";

/** Numbers of the findings that concern a fin, by the fin's name. */
export type FinFlags = ReadonlyMap<string, string>;

interface NameRoom {
  readonly lay: Lay;
  readonly textMm: number;
  readonly flags: FinFlags;
  readonly reader: Reader;
}

/** Each fin's name on the right side, between its base and the line, and under it on tape the findings that concern it. */
export function nameItems(marks: readonly FinMark[], room: NameRoom): readonly Item[] {
  return marks.filter((mark) => mark.side !== "left").flatMap((mark) => nameOf(mark, room));
}

function nameOf(mark: FinMark, { lay, textMm, flags, reader }: NameRoom): readonly Item[] {
  const { trailing, leading, side, box } = mark;
  const xM = (trailing.at.xM + leading.at.xM) / 2;
  const isCentre = side === "centre";
  const middle = placeOnBoard(lay, xM, isCentre ? trailing.at.yM : trailing.at.yM * 0.35);
  const beside = isCentre ? 2 + ((box?.widthM ?? 0) / 2) * lay.mmPerM : 0;
  const at = { x: middle.x + beside, y: middle.y + textMm * 0.35 };
  const anchor = isCentre ? "start" : "middle";
  const flag = flags.get(mark.fin);
  return [
    { kind: "text", text: finName(mark.fin, reader), at, anchor, sizeMm: textMm, role: "note", tone: "soft" },
    ...(flag === undefined
      ? []
      : flagItems(flag, { at: { x: at.x, y: at.y + textMm * 1.5 }, anchor, textMm })),
  ];
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
