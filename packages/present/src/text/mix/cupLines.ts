import {
  count,
  duration,
  formatLength,
  fraction,
  mass,
  type Phrase,
  type Plan,
  type Quantity,
  say,
  temperature,
  volume,
} from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellPhrase } from "../../language/tellPhrase";
import { tellText } from "../../language/tellText";
import { groupCups } from "../../words/groupCups";
import { hardenerAmounts } from "../../words/hardenerAmounts";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type Mix = NonNullable<Plan["mix"]>;
type Cup = Mix["coats"][number]["cups"][number];

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** What goes into each cup, by when it lies spread, and where it goes on. */
export function cupLines(mix: Mix, reader: Reader): readonly string[] {
  const gels = gelTable(mix, reader);
  const stretches = stretchTable(mix, reader);
  return [
    ...airLines(mix, reader),
    ...cupTable(mix, reader),
    ...(gels.length === 0 ? [] : ["", ...gels]),
    ...(stretches.length === 0 ? [] : ["", ...stretches]),
    ...masterLines(mix, reader),
  ];
}

function airLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const [first] = mix.coats;
  if (first === undefined) return [];
  const [shop, resin] = [temperature(first.temperatureK), temperature(first.resinTemperatureK)];
  return wrapText(t`Shop ${shop}, resin ${resin}. The dose is hardener over resin by mass.`, { indent: 2 });
}

/** A column that is only there where a cup has it. */
interface Extra {
  readonly head: Phrase;
  readonly of: (cup: Cup) => Quantity | null;
}

const EXTRAS: readonly Extra[] = [
  {
    head: say`drops`,
    of: (cup) => (cup.hardenerDrops === null ? null : { ...count(cup.hardenerDrops), grain: "coarse" }),
  },
  { head: say`wax`, of: (cup) => (cup.waxVolumeM3 > 0 ? volume(cup.waxVolumeM3) : null) },
  { head: say`tint in it`, of: (cup) => (cup.tintMassKg > 0 ? mass(cup.tintMassKg) : null) },
];

function cupTable(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (quantity: Quantity | null): string =>
    quantity === null ? "-" : showQuantity(quantity, reader);
  const extras = EXTRAS.filter(({ of }) =>
    mix.coats.some(({ cups }) => cups.some((cup) => of(cup) !== null)),
  );
  const rows = mix.coats.flatMap((coat) =>
    groupCups(coat.cups).map(({ count: cups, cup }) => [
      tellText(coat.id, reader),
      `${cups} x`,
      show(mass(cup.tintedBaseKg ?? cup.baseMassKg)),
      ...dosesOf(cup).map((of) => (of.value > 0 ? show(of) : "-")),
      ...extras.map(({ of }) => show(of(cup))),
      show(coat.hardenerRatio ? fraction(coat.hardenerRatio) : null),
    ]),
  );
  const heads = [
    t`cups`,
    t`resin`,
    t`hardener`,
    t`or`,
    ...extras.map(({ head }) => tellPhrase(head, reader)),
    t`dose`,
  ];
  return formatTable([words(t`coat`), ...heads.map(figure)], rows);
}

function dosesOf(cup: Cup): readonly Quantity[] {
  const { byMass, byVolume } = hardenerAmounts(cup);
  return [byMass, byVolume];
}

function gelTable(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const show = (timeS: number): string => showQuantity(duration(timeS), reader);
  const rows = mix.coats.flatMap(({ id, clock }) =>
    clock === null
      ? []
      : [
          [
            tellText(id, reader),
            show(clock.spreadByS),
            show(clock.potGelLowS),
            show(clock.potGelS),
            show(clock.potGelHighS),
          ],
        ],
  );
  if (rows.length === 0) return [];
  return formatTable(
    [
      words(t`after the hardener`),
      figure(t`spread by`),
      figure(t`cup gels, early`),
      figure(t`about`),
      figure(t`late`),
    ],
    rows,
  );
}

function stretchTable(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const tape = (lengthM: number): string => formatLength(lengthM, { units: reader.units, denominator: 8 });
  const rows = mix.coats.flatMap(({ id, cups }) =>
    cups.flatMap(({ fromTailM, toM, mixAtS }, i) =>
      fromTailM === null || toM === null
        ? []
        : [
            [
              tellText(id, reader),
              String(i + 1),
              showQuantity(duration(mixAtS), reader),
              t`${tape(toM)} to ${tape(fromTailM)}`,
            ],
          ],
    ),
  );
  if (rows.length === 0) return [];
  return formatTable(
    [words(t`in order`), figure(t`cup`), figure(t`hardener in at`), figure(t`covers, from the tail`)],
    rows,
  );
}

function masterLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  return mix.coats.flatMap(({ id, masterBatch, cups }) => {
    if (masterBatch === null) return [];
    const [tint, base] = [mass(masterBatch.tintMassKg), mass(masterBatch.baseMassKg)];
    return wrapText(
      cups.length > 1
        ? t`${id}: stir ${tint} of tint into ${base} of resin as one master batch, weigh the cups from it, then dose each.`
        : t`${id}: stir ${tint} of tint into ${base} of resin first, then dose it.`,
      { indent: 2, hanging: 4 },
    );
  });
}
