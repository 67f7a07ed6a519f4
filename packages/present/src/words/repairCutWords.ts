import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";
import { tell } from "../language/tell";
import { pieceName } from "./pieceName";

type RepairCut = NonNullable<Plan["cutplan"]>["repairs"][number];

/** What to cut of one cloth for the repairs, besides the order's own pieces. */
export function repairCutSentences(cut: RepairCut, reader: Reader): readonly string[] {
  const t = tell(reader);
  const patches = cut.patches
    .map(({ id, acrossM }) => `${pieceName(id, reader)}: ${showQuantity(length(acrossM), reader)}`)
    .join("; ");
  const inStrips = cut.patches.filter(({ strips }) => strips > 1);
  return [
    t`For the repairs, ${cut.cloth}: ${length(cut.lengthM)} more of a roll ${length(cut.widthM)} wide, or what is left of it where that is large enough.`,
    t`Round, from edge to edge: ${patches}.`,
    ...inStrips.map(
      ({ id, strips }) => t`${pieceName(id, reader)} is wider than the roll: lay it in ${strips} strips.`,
    ),
  ];
}
