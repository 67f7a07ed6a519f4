import type { Plan } from "@lapline/engine";
import type { Drawing, Item } from "../drawing/Drawing";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { wallTimeWords } from "../words/wallTimeWords";
import { box, dayItems, daysAxis } from "./daysAxis";

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
  }: { readonly reader: Reader; readonly widthMm: number; readonly textMm?: number },
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
  const heightMm = headMm + dated.length * rowMm + 1;
  const nought = { x: 0, y: 0 };
  const rows = dated.map((plan, i): Item[] => {
    const topMm = headMm + i * rowMm;
    const barMm = topMm + textMm * 1.4;
    const surfAt = plan.water.firstSurfAt;
    const words =
      surfAt === null ? plan.name : t`${plan.name}: first surf ${wallTimeWords(surfAt, reader).shortDay}`;
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
      t`Ink: hands on. Amber: curing. Each board as if it had stands and hands to itself; the command lapline calendar with several files shares them out.`,
    ],
    layers: [
      {
        id: "days",
        items: dayItems(axis, { hours: ALL_DAY, heightMm, widthMm, textMm, reader, isDated: true }),
      },
      { id: "boards", items: rows.flat() },
    ],
  };
}

function isDated({ startsAt }: Dated["calendar"][number]): boolean {
  return startsAt !== null && !startsAt.startsWith("day ");
}
