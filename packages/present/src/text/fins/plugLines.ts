import { duration, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { tell } from "../../language/tell";
import { formatTapeLength } from "../../words/formatTapeLength";
import { readNoLoadS } from "../../words/readNoLoadS";
import { tailWord } from "../../words/tailWords";
import { wrapText } from "../wrapText";

type Finset = NonNullable<Plan["finset"]>;

/** The leash plug: where it goes, the room it leaves, and when it may be pulled. */
export function plugLines(plan: Plan, { leashPlug: plug, line }: Finset, reader: Reader): readonly string[] {
  const t = tell(reader);
  if (plug === null) return [];
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  const tape = (valueM: number): string => formatTapeLength(valueM, reader);
  const room = [
    [t`foam under it`, plug.foamUnderM],
    [t`to the rail`, plug.toRailM],
    [t`to the stringer's middle`, plug.toStringerM],
    [plug.box === null ? t`to the next box` : t`to the ${plug.box} box`, plug.toBoxM],
    [
      plug.boxBeneath === null ? t`to the box beneath` : t`down to the ${plug.boxBeneath} box`,
      plug.foamToBoxM,
    ],
    [t`deepest here`, plug.mostDepthM],
  ] as const;
  const sentences = [
    plug.fromCrotchTapeM === null
      ? t`Leash plug, on the deck, ${plug.side}: ${tape(plug.fromTailTapeM)} from the ${tailWord(line)}, ${tape(plug.fromCentrelineM)} from the line.`
      : t`Leash plug, on the deck, ${plug.side}: ${tape(plug.fromTailTapeM)} from the ${tailWord(line)} (${tape(plug.fromCrotchTapeM)} from the crotch), ${tape(plug.fromCentrelineM)} from the line.`,
    t`Room: ${room.flatMap(([name, valueM]) => (valueM === null ? [] : [`${name} ${show(valueM)}`])).join(", ")}.`,
    ...(plug.patchDiameterM === null ? [] : [t`Cloth over it ${show(plug.patchDiameterM)} across.`]),
    t`No load for ${showQuantity(duration(readNoLoadS(plan, "leash-plug", plug.cureBeforeLoadS)), reader)}, or as the resin's sheet asks; then pull it straight up with the weight of ${showQuantity({ ...mass(plug.pullTestMassKg), grain: "coarse" }, reader)}.`,
  ];
  return sentences.flatMap((sentence) => wrapText(sentence, { indent: 2, hanging: 4 }));
}
