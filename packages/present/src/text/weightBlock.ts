import { mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** What the board will weigh, part by part. */
export function weightBlock(plan: Plan, reader: Reader): Block {
  const { weight } = plan;
  if (weight === null) {
    return {
      title: "WEIGHT",
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
      ["foam", show(weight.foamKg), ""],
      ["stringer", show(weight.stringerKg), ""],
      ["cloth", show(weight.clothKg), ""],
      ["resin", show(weight.resinKg), "cured"],
      ["fittings", show(weight.fittingsKg), ""],
      [
        "finished",
        show(weight.finishedKg),
        `${show(weight.finishedLowKg)} to ${show(weight.finishedHighKg)}`,
      ],
    ],
  );
  return { title: "WEIGHT", lines };
}
