import { mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** What the board will weigh, part by part. */
export function weightBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { weight } = plan;
  if (weight === null) {
    return {
      title: t`WEIGHT`,
      lines: sayWhyMissing(plan, "weight", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const show = (valueKg: number): string => showQuantity(mass(valueKg), reader);
  const [, ...lines] = formatTable(
    [
      { head: "", align: "left" },
      { head: "", align: "right" },
      { head: "", align: "left" },
    ],
    [
      [t`foam`, show(weight.foamKg), ""],
      [t`stringer`, show(weight.stringerKg), ""],
      [t`cloth`, show(weight.clothKg), ""],
      [t`resin`, show(weight.resinKg), t`cured`],
      [t`fittings`, show(weight.fittingsKg), ""],
      [
        t`finished`,
        show(weight.finishedKg),
        t`${show(weight.finishedLowKg)} to ${show(weight.finishedHighKg)}`,
      ],
    ],
  );
  return { title: t`WEIGHT`, lines };
}
