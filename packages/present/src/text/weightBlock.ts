import { mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { floatSentences } from "../words/floatSentences";
import type { Block } from "./Block";
import { type Column, formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Weight = NonNullable<Plan["weight"]>;

const words = (head: string): Column => ({ head, align: "left" });
const figure = (head: string): Column => ({ head, align: "right" });

/** What the board will weigh by part and after each coat, with room for the scale, and what it floats. */
export function weightBlock(plan: Plan, reader: Reader): Block {
  const { weight } = plan;
  if (weight === null) {
    return {
      title: "WEIGHT",
      lines: sayWhyMissing(plan, "weight", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  return {
    title: "WEIGHT",
    lines: [
      ...partTable(weight, reader),
      "",
      ...stageTable(weight, reader),
      "",
      ...floatSentences(weight, reader).flatMap((line) => wrapText(line, { indent: 2, hanging: 4 })),
    ],
  };
}

function partTable(weight: Weight, reader: Reader): readonly string[] {
  const t = tell(reader);
  return formatTable(
    [words(t`part`), figure(t`plan`), figure(t`from`), figure(t`to`)],
    [
      [t`foam`, ...band(reader, weight.foamKg, [weight.foamLowKg, weight.foamHighKg])],
      [t`stringer`, ...band(reader, weight.stringerKg, [weight.stringerLowKg, weight.stringerHighKg])],
      [t`cloth`, ...band(reader, weight.clothKg, [weight.clothLowKg, weight.clothHighKg])],
      [t`resin, cured`, ...band(reader, weight.resinKg, [weight.resinLowKg, weight.resinHighKg])],
      [t`boxes and plug`, ...band(reader, weight.fittingsKg, [weight.fittingsLowKg, weight.fittingsHighKg])],
      [t`finished`, ...band(reader, weight.finishedKg, [weight.finishedLowKg, weight.finishedHighKg])],
    ],
  );
}

function stageTable({ stages }: Weight, reader: Reader): readonly string[] {
  const t = tell(reader);
  return formatTable(
    [words(t`board after`), figure(t`plan`), figure(t`from`), figure(t`to`), words(t`on the scale`)],
    stages.map(({ id, massKg, massLowKg, massHighKg }) => [
      id === "blank" ? t`shaped blank` : tellText(id, reader),
      ...band(reader, massKg, [massLowKg, massHighKg]),
      "__________",
    ]),
  );
}

/** The ends in grams and kilograms alone: pounds and ounces beside all three are wider than the page. */
function band(reader: Reader, valueKg: number, endsKg: readonly [number, number]): readonly string[] {
  const metric: Reader = { ...reader, units: "mm" };
  return [showQuantity(mass(valueKg), reader), ...endsKg.map((endKg) => showQuantity(mass(endKg), metric))];
}
