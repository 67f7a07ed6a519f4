import { duration, type Plan, temperature } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { tellText } from "../../language/tellText";
import { type Column, formatTable } from "../formatTable";

const figure = (head: string): Column => ({ head, align: "right" });

/** What becomes of a cup's gel where the resin is colder or warmer than planned: both ends of what is told of it. */
export function gelOverTemperatureLines(mix: NonNullable<Plan["mix"]>, reader: Reader): readonly string[] {
  const t = tell(reader);
  const rows = mix.coats.flatMap(({ id, gelBand }) => {
    const ends = [gelBand[0], gelBand.at(-1)].filter((at) => at !== undefined);
    if (ends.length < 2) return [];
    return [
      [
        tellText(id, reader),
        ...ends.flatMap(({ temperatureK, gelLowS, gelHighS }) => [
          showQuantity(temperature(temperatureK), reader),
          t`${duration(gelLowS)} to ${duration(gelHighS)}`,
        ]),
      ],
    ];
  });
  if (rows.length === 0) return [];
  return formatTable(
    [
      { head: t`resin colder or warmer`, align: "left" },
      figure(t`at`),
      figure(t`a cup gels in`),
      figure(t`at`),
      figure(t`a cup gels in`),
    ],
    rows,
  );
}
