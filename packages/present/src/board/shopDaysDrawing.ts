import type { Plan, ShopCalendar } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import { estimateTextWidthMm } from "../drawing/estimateTextWidthMm";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { wallTimeWords } from "../words/wallTimeWords";
import { box, type DaysAxis, dayItems, daysAxis } from "./daysAxis";

type Dated = Plan & { readonly calendar: NonNullable<Plan["calendar"]> };

const BAR_MM = 3.2;
const LEAST_MM = 0.8;
const ALL_DAY = { from: "00:00", to: "24:00" };

/**
 * The boards of the shop under each other, each by its own days: when hands are on it, when it cures, and when it comes to the water.
 * @returns null where no board's days are dated
 */
export function shopDaysDrawing(
  plans: readonly Plan[],
  {
    reader,
    widthMm,
    textMm = 3.5,
    stands,
  }: {
    readonly reader: Reader;
    readonly widthMm: number;
    readonly textMm?: number;
    /** Who is on which stands when, where the boards share them; each board by its name. */
    readonly stands?: ShopCalendar["stands"];
  },
): Drawing | null {
  const dated = plans.filter((plan): plan is Dated => plan.calendar?.some(isDated) === true);
  if (dated.length === 0) return null;
  const t = tell(reader);
  const axis = daysAxis(
    dated.flatMap(({ calendar }) =>
      calendar
        .filter(isDated)
        .flatMap(({ startsAt, endsAt }) => [startsAt, endsAt].flatMap((at) => at ?? [])),
    ),
    widthMm,
  );
  const headMm = textMm * 2;
  const rowMm = textMm * 1.4 + BAR_MM + 2;
  const boardsMm = headMm + dated.length * rowMm;
  const pairs = [...new Set((stands ?? []).map(({ stand }) => stand))].sort((a, b) => a - b);
  const heightMm = boardsMm + pairs.length * rowMm + 1;
  const nought = { x: 0, y: 0 };
  const rows = dated.map((plan, i): Item[] => {
    const topMm = headMm + i * rowMm;
    const barMm = topMm + textMm * 1.4;
    const number = stands === undefined ? "" : `${i + 1} · `;
    const words = rowWords(plan, { number, reader, mostMm: widthMm - 1, textMm });
    return [
      ...plan.calendar.filter(isDated).flatMap((entry): Item[] => {
        const { sittings, endsAt, readyAt } = entry;
        const bar = (from: string, to: string, hatch: "solid" | "resin", inset: number): Item => ({
          kind: "hatch",
          hatch,
          points: box(
            { x: axis.at(from), y: barMm + inset },
            { x: Math.max(axis.at(to), axis.at(from) + LEAST_MM), y: barMm + BAR_MM - inset },
          ),
        });
        return [
          ...(readyAt === null || endsAt === null ? [] : [bar(endsAt, readyAt, "resin", BAR_MM / 4)]),
          ...sittings.map(({ startsAt, endsAt: to }) => bar(startsAt, to, "solid", 0)),
        ];
      }),
      {
        kind: "text",
        at: { x: 0.5, y: barMm - textMm * 0.3 },
        text: words,
        sizeMm: textMm,
        anchor: "start",
        role: "figure",
      },
    ];
  });
  return {
    widthMm,
    heightMm,
    frame: { origin: nought, alongMmPerM: nought, acrossMmPerM: nought },
    notes: [
      stands === undefined
        ? t`Ink: hands on. Amber: curing. Each board as if it had stands and hands to itself; the command lapline calendar with several files shares them out.`
        : t`Ink: hands on. Amber: curing. Beneath, for each pair of stands, the number of the board that lies on it.`,
    ],
    layers: [
      {
        id: "days",
        items: dayItems(axis, { hours: ALL_DAY, heightMm, widthMm, textMm, reader, isDated: true }),
      },
      { id: "boards", items: rows.flat() },
      {
        id: "stands",
        items: pairs.flatMap((pair, i) =>
          standRow(
            (stands ?? []).filter(({ stand }) => stand === pair),
            {
              axis,
              numberOf: (board) => String(dated.findIndex(({ name }) => name === board) + 1),
              topMm: boardsMm + i * rowMm,
              textMm,
              words: t`stands ${pair}`,
            },
          ),
        ),
      },
    ],
  };
}

interface RowWords {
  readonly number: string;
  readonly reader: Reader;
  readonly mostMm: number;
  readonly textMm: number;
}

/** The board's name and first surf; where that is too long for the sheet the name is cut. */
function rowWords({ name, water }: Plan, { number, reader, mostMm, textMm }: RowWords): string {
  const t = tell(reader);
  const { firstSurfAt } = water;
  const say = (called: string): string =>
    firstSurfAt === null
      ? number + called
      : number + t`${called}: first surf ${wallTimeWords(firstSurfAt, reader).shortDay}`;
  let most = name.length;
  while (most > 1 && estimateTextWidthMm(say(`${name.slice(0, most)}…`), textMm) > mostMm) most--;
  return estimateTextWidthMm(say(name), textMm) <= mostMm
    ? say(name)
    : say(`${name.slice(0, most).trimEnd()}…`);
}

/** One pair of stands: each stay from edge to edge, with the board's number above it where there is room. */
function standRow(
  stays: ShopCalendar["stands"],
  {
    axis,
    numberOf,
    topMm,
    textMm,
    words,
  }: {
    readonly axis: DaysAxis;
    numberOf(board: string): string;
    readonly topMm: number;
    readonly textMm: number;
    readonly words: string;
  },
): Item[] {
  const barMm = topMm + textMm * 1.4;
  const label = (text: string, x: number): Item => ({
    kind: "text",
    at: { x, y: barMm - textMm * 0.3 },
    text,
    sizeMm: textMm,
    anchor: "start",
    role: "figure",
  });
  let freeMm = 0.5 + estimateTextWidthMm(words, textMm) + 1;
  return [
    label(words, 0.5),
    ...stays.flatMap(({ board, fromAt, toAt }): Item[] => {
      const [from, to] = [axis.at(fromAt), axis.at(toAt)];
      const points = box({ x: from, y: barMm }, { x: Math.max(to, from + LEAST_MM), y: barMm + BAR_MM });
      const number = numberOf(board);
      const named = from >= freeMm;
      if (named) freeMm = from + estimateTextWidthMm(number, textMm) + 0.5;
      return [
        { kind: "hatch", hatch: "resin", points },
        { kind: "polyline", closed: true, pen: "thin", points },
        ...(named ? [label(number, from)] : []),
      ];
    }),
  ];
}

function isDated({ startsAt }: Dated["calendar"][number]): boolean {
  return startsAt !== null && !startsAt.startsWith("day ");
}
