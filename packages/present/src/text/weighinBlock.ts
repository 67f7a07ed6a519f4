import { mass, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";
import { aheadSentences, weighinSentences } from "../words/weighinWords";
import type { Block } from "./Block";
import { formatTable } from "./formatTable";
import { wrapText } from "./wrapText";

/** The board on the scale beside the plan; null where nothing was weighed. */
export function weighinBlock({ weighins }: Plan, reader: Reader): Block | null {
  if (weighins === null) return null;
  const t = tell(reader);
  const show = (valueKg: number | null): string =>
    valueKg === null ? "-" : showQuantity(mass(valueKg), { ...reader, units: "mm" });
  const table = formatTable(
    [
      { head: t`board after`, align: "left" },
      { head: t`on the scale`, align: "right" },
      { head: t`plan`, align: "right" },
      { head: t`gained`, align: "right" },
      { head: t`plan`, align: "right" },
      { head: t`resin kept`, align: "right" },
      { head: t`plan`, align: "right" },
    ],
    weighins.entries.map((entry) => [
      entry.after === "blank" ? t`shaped blank` : tellText(entry.after, reader),
      show(entry.massKg),
      show(entry.plannedKg),
      show(entry.gainedKg),
      show(entry.plannedGainKg),
      show(entry.keptKg),
      show(entry.keptKg === null ? null : entry.plannedKeptKg),
    ]),
  );
  const sentences = [
    ...weighins.entries.flatMap((entry) => weighinSentences(entry, reader).join(" ")),
    ...aheadSentences(weighins, reader),
  ].filter((sentence) => sentence !== "");
  return {
    title: t`WEIGH-IN`,
    lines: [
      ...table,
      ...(sentences.length > 0 ? [""] : []),
      ...sentences.flatMap((sentence) => wrapText(sentence, { indent: 2, hanging: 4 })),
    ],
  };
}
