import { duration, fraction, type Plan, temperature } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { asciiText } from "../asciiText";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type MixResin = NonNullable<Plan["mix"]>["resins"][number];

const PLOT = { wide: 58, tall: 11 } as const;

/** Resins whose gel points tell against each other. */
export function oddResins(plan: Plan): readonly MixResin[] {
  return plan.mix?.resins.filter(({ points, exponent }) => isOdd(points, exponent)) ?? [];
}

function isOdd(points: MixResin["points"], exponent: number | null): boolean {
  return points.some((point) => point.isOdd) || (points.length > 0 && exponent === null);
}

/**
 * The gel points of a resin as a plot in letters, time upwards in even factors and temperature to the right, each point by
 * its number, and beneath it what each is; those that contradict another are marked.
 */
export function gelPointsPlot(resin: MixResin, reader: Reader): readonly string[] {
  const t = tell(reader);
  const { points } = resin;
  const warmth = rangeOf(points.map((point) => point.temperatureK));
  const time = rangeOf(points.map((point) => Math.log(point.gelS)));
  const rows = Array.from({ length: PLOT.tall }, () => new Array<string>(PLOT.wide).fill(" "));
  points.forEach((point, i) => {
    const across = cell(point.temperatureK, warmth, PLOT.wide - 3);
    const row = rows[PLOT.tall - 1 - cell(Math.log(point.gelS), time, PLOT.tall - 1)]!;
    [...`${i + 1}${point.isOdd ? "!" : ""}`].forEach((letter, j) => {
      row[across + j] = letter;
    });
  });
  const show = (timeS: number): string => showQuantity(duration(timeS), reader).padStart(10);
  const lines = rows.map((row, i) => {
    const head =
      i === 0
        ? show(Math.exp(time.most))
        : i === PLOT.tall - 1
          ? show(Math.exp(time.least))
          : "".padStart(10);
    return `  ${head} |${row.join("")}`.trimEnd();
  });
  const ends = [warmth.least, warmth.most].map((at) =>
    showQuantity(temperature(at), { ...reader, units: "mm" }),
  );
  const foot = `${ends[0]}${(ends[1] ?? "").padStart(PLOT.wide - (ends[0] ?? "").length)}`;
  return [
    ...wrapText(t`Gel points of ${resin.name}, time over temperature:`, { indent: 2 }),
    ...lines,
    `  ${"".padStart(10)} +${"-".repeat(PLOT.wide)}`,
    asciiText(`${"".padStart(14)}${foot}`),
    ...pointTable(points, reader),
  ];
}

function pointTable(points: MixResin["points"], reader: Reader): readonly string[] {
  const t = tell(reader);
  const figure = (head: string): Column => ({ head, align: "right" });
  const rows = points.map((point, i) => [
    String(i + 1),
    showQuantity(temperature(point.temperatureK), reader),
    showQuantity(fraction(point.doseRatio), reader),
    showQuantity(duration(point.gelS), reader),
    point.fittedS === null ? "-" : showQuantity(duration(point.fittedS), reader),
    point.isOdd ? "read it again" : "",
  ]);
  return formatTable(
    [
      figure(t`point`),
      figure(t`temperature`),
      figure(t`dose`),
      figure(t`gels in`),
      figure(t`fit`),
      { head: "", align: "left" },
    ],
    rows,
  );
}

interface Range {
  readonly least: number;
  readonly most: number;
}

function rangeOf(values: readonly number[]): Range {
  return { least: Math.min(...values), most: Math.max(...values) };
}

/** Which of so many cells a value falls into; the middle where all are alike. */
function cell(value: number, { least, most }: Range, cells: number): number {
  if (most === least) return Math.round(cells / 2);
  return Math.round(((value - least) / (most - least)) * cells);
}
