import { duration, flow, mass, type Plan, say, temperature } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellPhrase } from "../../language/tellPhrase";
import { tellText } from "../../language/tellText";
import { worstVapour } from "../../words/worstVapour";
import { type Column, formatTable } from "../formatTable";
import { wrapText } from "../wrapText";

type Mix = NonNullable<Plan["mix"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** A cup left standing, what a coat gives off and the air against it, and how long the sun takes. */
export function heatAndAirLines(mix: Mix, reader: Reader): readonly string[] {
  const parts = [heatLines(mix, reader), airLines(mix, reader), sunLines(mix, reader)].filter(
    (lines) => lines.length > 0,
  );
  return parts.flatMap((lines, i) => (i === 0 ? lines : ["", ...lines]));
}

const HEAT_WORDS = { mild: say`sheds its heat`, warm: say`warms up`, hot: say`runs hot` } as const;

function heatLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = mix.coats.flatMap(({ id, heat, clock }) =>
    heat === null || clock === null
      ? []
      : [
          [
            tellText(id, reader),
            tellPhrase(HEAT_WORDS[heat.warning], reader),
            showQuantity(duration(clock.potGelS), reader),
            showQuantity(duration(heat.coolingS), reader),
            showQuantity(temperature(heat.boundK), { ...reader, units: "mm" }),
          ],
        ],
  );
  if (rows.length === 0) return [];
  return [
    ...formatTable(
      [
        words(t`a cup left standing`),
        words(""),
        figure(t`gels in`),
        figure(t`cools in`),
        figure(t`never above`),
      ],
      rows,
    ),
    ...wrapText(
      t`The last is a bound, all heat kept in, and no forecast. Leave none standing: what is over goes into a flat pan outdoors.`,
      { indent: 2 },
    ),
  ];
}

function airLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  const worst = worstVapour(mix);
  if (worst === null) return [];
  const { id, vapour } = worst;
  const [styrene, over] = [
    showQuantity(mass(vapour.styreneKg), reader),
    showQuantity(duration(vapour.overS), reader),
  ];
  return [
    ...wrapText(
      t`Air about the gel. ${id} gives off about ${styrene} of styrene in ${over}. Fresh air that would keep the shop at`,
      { indent: 2 },
    ),
    ...formatTable(
      [words(t`a published limit`), figure(t`ppm`), figure(t`fresh air`)],
      vapour.needs.map(({ name, limitPpm, freshAirM3S }) => [
        tellText(name, reader),
        String(limitPpm),
        showQuantity(flow(freshAirM3S), reader),
      ]),
      4,
    ),
    ...wrapText(
      t`Reckoned high, on all the resin mixed, for the air; the styrene that Glass counts is what the coat on the board loses.`,
      { indent: 2 },
    ),
    ...wrapText(
      t`Limits differ by country and change. Not a compliance calculation: the safety data sheet, local codes and licensed practice decide.`,
      { indent: 2 },
    ),
  ];
}

function sunLines(mix: Mix, reader: Reader): readonly string[] {
  const t = tell(reader);
  return mix.resins.flatMap(({ name, exposures }) => {
    if (exposures.length === 0) return [];
    const show = (timeS: number): string => showQuantity(duration(timeS), reader);
    return formatTable(
      [words(t`in the sun`), figure(t`early`), figure(t`about`), figure(t`late`)],
      exposures.map((each) => [
        t`${name}, UV index ${each.uvIndex}`,
        show(each.exposureLowS),
        show(each.exposureS),
        show(each.exposureHighS),
      ]),
    );
  });
}
