import type { Item } from "../../drawing/Drawing";
import { wrapToWidth } from "../../drawing/wrapToWidth";
import { type Tell, tell } from "../../language/tell";
import type { Rect } from "../pdf/PaperDocument";
import type { TextStyle, Typesetter } from "../pdf/Typesetter";
import type { TemplateForReader } from "../template/Template";
import { isTrue, type RulerReads } from "./RulerReads";

export interface PageWords {
  readonly template: TemplateForReader;
  /** Which part this page belongs to and its place in it: `left half, B2`; empty for the first page. */
  readonly place: string;
  readonly number: number;
  readonly of: number;
  readonly date: string;
  readonly reads: RulerReads;
}

const NAME: TextStyle = { sizeMm: 3.3, weight: 600 };
const STRONG: TextStyle = { sizeMm: 2.9, weight: 600 };
const PLAIN: TextStyle = { sizeMm: 2.4, weight: 400 };
const LEADING = 1.18;

/** The words at the foot of each page: whose board, which page of how many, how it must be printed and how to check it. */
export function footerItems(words: PageWords, room: Rect, type: Typesetter): readonly Item[] {
  const t = tell(words.template.reader);
  const lines = [
    ...clipToWidth(words.template.boardName, NAME, { room, type, most: 1 }),
    ...clipToWidth(pageLine(words), STRONG, { room, type, most: 1 }),
    ...clipToWidth(stateLine(words.template), STRONG, { room, type, most: 1 }),
    ...clipToWidth(words.template.orientation, STRONG, { room, type, most: 1 }),
    ...clipToWidth(checkLine(words.reads, t), PLAIN, { room, type, most: 3 }),
  ];
  let y = room.y;
  return lines.map(({ text, style }): Item => {
    y += style.sizeMm * LEADING;
    const isStop = text.startsWith(t`STOP`);
    return {
      kind: "text",
      anchor: "start",
      role: style.weight === 600 ? "title" : "note",
      sizeMm: style.sizeMm,
      at: { x: room.x, y },
      text,
      ...(isStop ? { tone: "lead" } : {}),
    };
  });
}

/** What stops the build goes before what keeps the board from the water; empty where neither stands. */
function stateLine({ stops, barred, reader }: TemplateForReader): string {
  if (stops.length > 0) return tell(reader)`STOP: a blocker stands against this plan, see the first page.`;
  return barred ?? "";
}

function pageLine({ template, place, number, of, date }: PageWords): string {
  const what = [template.title, place].filter((word) => word !== "").join(", ");
  const t = tell(template.reader);
  return t`${what} · page ${number} of ${of} · Lapline ${template.engine}, ${date}`;
}

function checkLine(reads: RulerReads, t: Tell): string {
  const check = t`Print at 100 %. Both rulers 100 mm and 4 in; from 60 to 80, across the corner, 100 mm.`;
  if (isTrue(reads)) return check;
  const madeUp = t`Made up for a printer that printed 100 mm as ${reads.acrossMm} mm across, ${reads.upMm} mm up.`;
  return `${check} ${madeUp}`;
}

interface ClipRoom {
  readonly room: Rect;
  readonly type: Typesetter;
  /** Lines at most; what does not fit ends in dots. */
  readonly most: number;
}

function clipToWidth(text: string, style: TextStyle, { room, type, most }: ClipRoom) {
  const measure = (part: string) => type.widthMm(part, style);
  const lines = wrapToWidth(text, room.widthMm, measure);
  const shown = lines.slice(0, most);
  if (lines.length > most) shown[most - 1] = shorten(`${shown[most - 1] ?? ""} …`, room.widthMm, measure);
  return shown.map((line) => ({ text: line, style }));
}

function shorten(text: string, widthMm: number, measure: (part: string) => number): string {
  let [...letters] = text.replace(/ …$/, "");
  while (letters.length > 0 && measure(`${letters.join("")}…`) > widthMm) letters = letters.slice(0, -1);
  return `${letters.join("").trimEnd()}…`;
}
