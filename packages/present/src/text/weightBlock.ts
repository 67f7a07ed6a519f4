import { formatQuantity, mass, type Plan, type Units } from "@lapline/engine";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** What the board will weigh, part by part. */
export function weightBlock(plan: Plan, units: Units): Block {
  const { weight } = plan;
  if (weight === null) {
    return {
      title: "WEIGHT",
      lines: sayWhyMissing(plan, "weight", units).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const show = (valueKg: number): string => formatQuantity(mass(valueKg), units);
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
