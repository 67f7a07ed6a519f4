import { count, fraction, length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { cutSteps } from "../words/cutWords";
import { repairCutSentences } from "../words/repairCutWords";
import type { Block } from "./Block";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

type Roll = NonNullable<Plan["cutplan"]>["rolls"][number];

/** What to buy of each cloth, and the cuts in order. */
export function cutBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { cutplan, layup } = plan;
  const hasCuts = cutplan !== null && cutplan.rolls.length + cutplan.repairs.length > 0;
  if (!hasCuts || layup === null) {
    const lines = sayWhyMissing(plan, "cutplan", reader).flatMap((reason) =>
      wrapText(reason, { indent: 2, hanging: 4 }),
    );
    return { title: t`CUT`, lines };
  }
  const lines = cutplan.rolls.flatMap((roll, i) => [
    ...(i > 0 ? [""] : []),
    ...wrapText(headOf(roll, reader), { indent: 2, hanging: 4 }),
    ...cutSteps(roll, layup, reader).flatMap((step) => {
      const off = showQuantity(length(step.lengthM), reader);
      const first = t`cut ${step.number}: ${off} off the roll, straight across, for ${step.pieces.join(", ")}`;
      return [
        ...wrapText(first, { indent: 4, hanging: 6 }),
        ...step.sentences.flatMap((sentence) => wrapText(sentence, { indent: 6 })),
      ];
    }),
  ]);
  const repairs = cutplan.repairs.flatMap((cut) => [
    "",
    ...repairCutSentences(cut, reader).flatMap((says) => wrapText(says, { indent: 2, hanging: 4 })),
  ]);
  return { title: t`CUT`, lines: [...lines, ...repairs] };
}

function headOf(roll: Roll, reader: Reader): string {
  const t = tell(reader);
  const buy = t`${roll.cloth}: buy ${length(roll.lengthM)} of a roll ${length(roll.widthM)} wide; ${fraction(roll.usedRatio)} of it ends up on the board`;
  return roll.cost === null
    ? buy
    : t`${buy}; cloth for ${count(roll.cost)} at ${count(roll.price ?? 0)} a metre`;
}
