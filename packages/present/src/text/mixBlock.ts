import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import type { Block } from "./Block";
import { cupLines } from "./mix/cupLines";
import { filmLines } from "./mix/filmLines";
import { gelOverTemperatureLines } from "./mix/gelOverTemperatureLines";
import { gelPointsPlot, oddResins } from "./mix/gelPointsPlot";
import { heatAndAirLines } from "./mix/heatAndAirLines";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** Cups in the order they are used, with the dose in grams and millilitres, the band in which each goes off, and the film's clock. */
export function mixBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { mix } = plan;
  if (mix === null) {
    return {
      title: t`MIX`,
      lines: sayWhyMissing(plan, "mix", reader).flatMap((reason) => wrapText(reason, { indent: 2 })),
    };
  }
  const parts = [
    [...cupLines(mix, reader), ...refusedLines(plan, reader)],
    ...oddResins(plan).map((resin) => gelPointsPlot(resin, reader)),
    gelOverTemperatureLines(mix, reader),
    filmLines(mix, reader),
    heatAndAirLines(mix, reader),
  ].filter((lines) => lines.length > 0);
  return { title: t`MIX`, lines: parts.flatMap((lines, i) => (i === 0 ? lines : ["", ...lines])) };
}

/** A coat that no dose in the resin's range can serve has no cup, and says why. */
function refusedLines(plan: Plan, reader: Reader): readonly string[] {
  const t = tell(reader);
  const refused = plan.mix?.coats.filter((coat) => coat.cups.length === 0) ?? [];
  if (refused.length === 0) return [];
  const reasons = sayWhyMissing(plan, "mix", reader);
  return [
    ...refused.flatMap((coat) => wrapText(t`${coat.id}: no cup can be mixed as things are.`, { indent: 2 })),
    ...reasons.flatMap((reason) => wrapText(reason, { indent: 4 })),
  ];
}
