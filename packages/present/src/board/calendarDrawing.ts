import { duration, type Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { stepTitle } from "../words/stepTitle";
import { box, type DaysAxis, dayItems, daysAxis, type OpenHours } from "./daysAxis";

type Entry = NonNullable<Plan["calendar"]>[number];
type Placed = Entry & { readonly startsAt: string; readonly endsAt: string };

export interface CalendarDrawingOptions {
  readonly reader: Reader;
  readonly widthMm: number;
  readonly hours: OpenHours;
  readonly textMm?: number;
}

const BAR_MM = 2.6;
/** Ten minutes would be no wider than a hair: so wide at least is a bar drawn. */
const LEAST_MM = 0.8;

/**
 * The days as bars, a row for each step in order of time: hands on, then what its coat cures until the next may begin; its window
 * beneath, and how far it can slip without moving the first surf; hours in which the shop is shut shaded.
 * @returns null where no days are planned
 */
export function calendarDrawing(
  plan: Plan,
  { reader, widthMm, hours, textMm = 3.5 }: CalendarDrawingOptions,
): Drawing | null {
  const placed = (plan.calendar ?? []).filter(
    (entry): entry is Placed => entry.startsAt !== null && entry.endsAt !== null,
  );
  if (placed.length === 0) return null;
  const t = tell(reader);
  const axis = daysAxis(placed.flatMap(timesOf), widthMm);
  const headMm = textMm * 2;
  const rowMm = textMm * 1.25 + BAR_MM + 1.6;
  const heightMm = headMm + placed.length * rowMm + 1;
  const letters = Math.floor((widthMm - 1) / estimateTextWidthMm("0", textMm));
  const isDated = !placed[0]?.startsAt.startsWith("day ");
  const nought = { x: 0, y: 0 };
  return {
    widthMm,
    heightMm,
    frame: { origin: nought, alongMmPerM: nought, acrossMmPerM: nought },
    notes: [
      t`Ink: hands on. Amber: curing or resting until the next step may begin. Bracket beneath: the window in which it must begin. Broken line: how far it can slip. Shaded: the shop is shut.`,
      ...(placed.some(({ done }) => done) ? [t`Grey: done.`] : []),
      ...(placed.some(({ late }) => late) ? [t`Red lead: its window has closed before.`] : []),
    ],
    layers: [
      { id: "days", items: dayItems(axis, { hours, heightMm, widthMm, textMm, reader, isDated }) },
      {
        id: "steps",
        items: placed.flatMap((entry, i) =>
          rowItems(entry, {
            axis,
            topMm: headMm + i * rowMm,
            textMm,
            widthMm,
            words: titleOf(plan, entry, { reader, letters }),
          }),
        ),
      },
    ],
  };
}

function timesOf({ startsAt, endsAt, readyAt, latestStartAt }: Placed): string[] {
  return [startsAt, endsAt, ...[readyAt, latestStartAt].flatMap((at) => at ?? [])];
}

/** Its clock, its title up to the first comma or colon, which stands in full in the list of steps, and its room where that fits. */
function titleOf(
  plan: Plan,
  entry: Placed,
  room: { readonly reader: Reader; readonly letters: number },
): string {
  const { reader, letters } = room;
  const t = tell(reader);
  const title = stepTitle(plan.steps?.find(({ id }) => id === entry.step)?.title ?? entry.step, reader);
  const isRepair = entry.step.startsWith("repair-");
  const words = `${entry.startsAt.slice(-"09:00".length)} ${isRepair ? title : (title.split(/[,:;]/)[0] ?? title)}`;
  const hasSlack = entry.slackS !== null && entry.slackS > 0;
  const spare = hasSlack ? t`, ${showQuantity(duration(entry.slackS ?? 0), reader)} to spare` : "";
  if (words.length + spare.length <= letters) return words + spare;
  return words.length <= letters ? words : `${words.slice(0, letters - 1).trimEnd()}…`;
}

interface RowRoom {
  readonly axis: DaysAxis;
  readonly topMm: number;
  readonly textMm: number;
  readonly widthMm: number;
  readonly words: string;
}

function rowItems(entry: Placed, { axis, topMm, textMm, widthMm, words }: RowRoom): Item[] {
  const barMm = topMm + textMm * 1.25;
  const footMm = barMm + BAR_MM;
  const tone = entry.late ? ({ tone: "lead" } as const) : entry.done ? ({ tone: "soft" } as const) : {};
  const x = axis.at(entry.startsAt);
  const wordsMm = estimateTextWidthMm(words, textMm);
  return [
    ...curing(entry, axis, barMm),
    ...entry.sittings.map(
      ({ startsAt, endsAt }): Item => ({
        kind: "hatch",
        hatch: "solid",
        points: box(
          { x: axis.at(startsAt), y: barMm },
          { x: Math.max(axis.at(endsAt), axis.at(startsAt) + LEAST_MM), y: footMm },
        ),
        ...tone,
      }),
    ),
    ...slack(entry, axis, barMm + BAR_MM / 2),
    ...window(entry, axis, footMm + 0.7),
    {
      kind: "text",
      at: { x: Math.max(0.5, Math.min(x, widthMm - wordsMm - 0.5)), y: barMm - textMm * 0.25 },
      text: words,
      sizeMm: textMm,
      anchor: "start",
      role: "figure",
      ...tone,
    },
  ];
}

/** From the hands' going off until the next step may begin. */
function curing({ endsAt, readyAt, sittings }: Placed, axis: DaysAxis, barMm: number): Item[] {
  if (readyAt === null || axis.at(readyAt) - axis.at(endsAt) < 0.2) return [];
  const inset = sittings.length === 0 ? 0 : BAR_MM / 4;
  const points = box(
    { x: axis.at(endsAt), y: barMm + inset },
    { x: axis.at(readyAt), y: barMm + BAR_MM - inset },
  );
  return [
    { kind: "hatch", hatch: "resin", points },
    { kind: "polyline", closed: true, pen: "thin", points },
  ];
}

function slack({ startsAt, latestStartAt, slackS }: Placed, axis: DaysAxis, y: number): Item[] {
  if (latestStartAt === null || slackS === null || slackS <= 0) return [];
  return [
    { kind: "line", pen: "hidden", from: { x: axis.at(startsAt), y }, to: { x: axis.at(latestStartAt), y } },
  ];
}

/** Open to the left where it opened before the axis begins. */
function window({ opensAt, closesAt }: Placed, axis: DaysAxis, y: number): Item[] {
  if (opensAt === null || closesAt === null) return [];
  const [from, to] = [axis.at(opensAt), axis.at(closesAt)];
  if (!(to > from)) return [];
  const end = (x: number): Item => ({ kind: "line", pen: "thin", from: { x, y: y - 0.7 }, to: { x, y } });
  return [end(from), end(to), { kind: "line", pen: "thin", from: { x: from, y }, to: { x: to, y } }];
}
