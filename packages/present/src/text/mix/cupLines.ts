import {
  count,
  duration,
  formatLength,
  formatQuantity,
  fraction,
  mass,
  type Plan,
  type Quantity,
  temperature,
  type Units,
  volume,
} from "@lapline/engine";
import { groupCups } from "../../words/groupCups";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type Mix = NonNullable<Plan["mix"]>;
type Cup = Mix["coats"][number]["cups"][number];

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** What goes into each cup, by when it lies spread, and where it goes on. */
export function cupLines(mix: Mix, units: Units): readonly string[] {
  const stretches = stretchTable(mix, units);
  return [
    ...airLines(mix, units),
    ...cupTable(mix, units),
    "",
    ...gelTable(mix, units),
    ...(stretches.length === 0 ? [] : ["", ...stretches]),
    ...masterLines(mix, units),
  ];
}

function airLines(mix: Mix, units: Units): readonly string[] {
  const [first] = mix.coats;
  if (first === undefined) return [];
  const [shop, resin] = [first.temperatureK, first.resinTemperatureK].map((at) =>
    formatQuantity(temperature(at), units),
  );
  return wrapText(`Shop ${shop}, resin ${resin}. The dose is hardener over resin by mass.`, { indent: 2 });
}

/** A column that is only there where a cup has it. */
interface Extra {
  readonly head: string;
  readonly of: (cup: Cup) => Quantity | null;
}

const EXTRAS: readonly Extra[] = [
  { head: "drops", of: (cup) => (cup.hardenerDrops === null ? null : count(Math.round(cup.hardenerDrops))) },
  { head: "wax", of: (cup) => (cup.waxVolumeM3 > 0 ? volume(cup.waxVolumeM3) : null) },
  { head: "tint in it", of: (cup) => (cup.tintMassKg > 0 ? mass(cup.tintMassKg) : null) },
];

function cupTable(mix: Mix, units: Units): readonly string[] {
  const show = (quantity: Quantity | null): string =>
    quantity === null ? "-" : formatQuantity(quantity, units);
  const extras = EXTRAS.filter(({ of }) =>
    mix.coats.some(({ cups }) => cups.some((cup) => of(cup) !== null)),
  );
  const rows = mix.coats.flatMap((coat) =>
    groupCups(coat.cups).map(({ count: cups, cup }) => [
      coat.id,
      `${cups} x`,
      show(mass(cup.baseMassKg)),
      show(mass(cup.hardenerMassKg)),
      show(volume(cup.hardenerVolumeM3)),
      ...extras.map(({ of }) => show(of(cup))),
      show(coat.hardenerRatio === null ? null : fraction(coat.hardenerRatio)),
    ]),
  );
  const heads = ["cups", "resin", "hardener", "or", ...extras.map(({ head }) => head), "dose"];
  return formatTable([words("coat"), ...heads.map(figure)], rows);
}

function gelTable(mix: Mix, units: Units): readonly string[] {
  const show = (timeS: number): string => formatQuantity(duration(timeS), units);
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [[id, show(clock.spreadByS), show(clock.potGelLowS), show(clock.potGelS), show(clock.potGelHighS)]],
  );
  return formatTable(
    [
      words("after the hardener"),
      figure("spread by"),
      figure("cup gels, early"),
      figure("about"),
      figure("late"),
    ],
    rows,
  );
}

function stretchTable(mix: Mix, units: Units): readonly string[] {
  const tape = (lengthM: number): string => formatLength(lengthM, { units, denominator: 8 });
  const rows = mix.coats.flatMap(({ id, cups }) =>
    cups.flatMap(({ fromTailM, toM, mixAtS }, i) =>
      fromTailM === null || toM === null
        ? []
        : [
            [
              id,
              String(i + 1),
              formatQuantity(duration(mixAtS), units),
              `${tape(toM)} to ${tape(fromTailM)}`,
            ],
          ],
    ),
  );
  if (rows.length === 0) return [];
  return formatTable(
    [words("in order"), figure("cup"), figure("hardener in at"), figure("covers, from the tail")],
    rows,
  );
}

function masterLines(mix: Mix, units: Units): readonly string[] {
  return mix.coats.flatMap(({ id, masterBatch }) => {
    if (masterBatch === null) return [];
    const [tint, base] = [masterBatch.tintMassKg, masterBatch.baseMassKg].map((massKg) =>
      formatQuantity(mass(massKg), units),
    );
    return wrapText(
      `${id}: stir ${tint} of tint into ${base} of resin as one master batch, weigh the cups from it, then dose each.`,
      { indent: 2, hanging: 4 },
    );
  });
}
