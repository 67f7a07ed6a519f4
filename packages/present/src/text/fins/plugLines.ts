import { duration, length, mass, type Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import { showQuantity } from "../../language/showQuantity";
import { finName } from "../../words/finName";
import { formatTapeLength } from "../../words/formatTapeLength";
import { readNoLoadS } from "../../words/readNoLoadS";
import { tailWord } from "../../words/tailWords";
import { wrapText } from "../wrapText";

type Finset = NonNullable<Plan["finset"]>;

/** The leash plug: where it goes, the room it leaves, and when it may be pulled. */
export function plugLines(plan: Plan, { leashPlug: plug, line }: Finset, reader: Reader): readonly string[] {
  if (plug === null) return [];
  const show = (valueM: number): string => showQuantity(length(valueM), reader);
  const room = [
    ["foam under it", plug.foamUnderM],
    ["to the rail", plug.toRailM],
    ["to the stringer", plug.toStringerM],
    [plug.box === null ? "to the next box" : `to the ${finName(plug.box)} box`, plug.toBoxM],
    [
      plug.boxBeneath === null ? "to the box beneath" : `down to the ${finName(plug.boxBeneath)} box`,
      plug.foamToBoxM,
    ],
    ["deepest here", plug.mostDepthM],
  ] as const;
  const sentences = [
    `Leash plug, on the deck, ${plug.side}: ${formatTapeLength(plug.fromTailTapeM, reader)} from the ${tailWord(line)}${plug.fromCrotchTapeM === null ? "" : ` (${formatTapeLength(plug.fromCrotchTapeM, reader)} from the crotch)`}, ${formatTapeLength(plug.fromCentrelineM, reader)} from the line.`,
    `Room: ${room.flatMap(([name, valueM]) => (valueM === null ? [] : [`${name} ${show(valueM)}`])).join(", ")}.`,
    ...(plug.patchDiameterM === null ? [] : [`Cloth over it ${show(plug.patchDiameterM)} across.`]),
    `No load for ${showQuantity(duration(readNoLoadS(plan, "leash-plug", plug.cureBeforeLoadS)), reader)}, or as the resin's sheet asks; then pull it straight up with the weight of ${showQuantity({ ...mass(plug.pullTestMassKg), grain: "coarse" }, reader)}.`,
  ];
  return sentences.flatMap((sentence) => wrapText(sentence, { indent: 2, hanging: 4 }));
}
