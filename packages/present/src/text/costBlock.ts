import type { Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { costSentences, costWords } from "../words/costWords";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { sayWhyMissing } from "./sayWhyMissing";
import { wrapText } from "./wrapText";

/** What the materials cost, what to buy and what is left over. */
export function costBlock(plan: Plan, reader: Reader): Block {
  const t = tell(reader);
  const { cost } = plan;
  if (cost === null) {
    const lines = sayWhyMissing(plan, "cost", reader).flatMap((reason) => wrapText(reason, { indent: 2 }));
    return { title: t`COST`, lines };
  }
  const table = formatTable(
    [
      { head: t`material`, align: "left" },
      { head: t`this board takes`, align: "right" },
      { head: t`wasted`, align: "right" },
      { head: t`to buy`, align: "right" },
      { head: t`left over`, align: "right" },
      { head: t`cost`, align: "right" },
    ],
    // In both systems resin, wax and cloth are weighed, measured and sold by the gram, the litre and the metre.
    costWords(cost, { ...reader, units: "mm" }).map((line) => [
      line.name,
      line.takes,
      line.wasted,
      line.buy,
      line.left,
      line.cost,
    ]),
  );
  const sentences = costSentences(cost, reader);
  return {
    title: t`COST`,
    lines: [
      ...table,
      ...(sentences.length > 0 ? [""] : []),
      ...sentences.flatMap((sentence) => wrapText(sentence, { indent: 2, hanging: 4 })),
    ],
  };
}
