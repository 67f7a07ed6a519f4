import { length, type Plan } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { pieceName } from "./pieceName";

type Roll = NonNullable<Plan["cutplan"]>["rolls"][number];
type Placed = Roll["placed"][number];
type Layup = NonNullable<Plan["layup"]>;

/** One cut straight across the roll, and what to do with it. */
export interface CutStep {
  readonly id: string;
  /** From 1, in the order of the cuts. */
  readonly number: number;
  readonly lengthM: number;
  readonly pieces: readonly string[];
  /** Whole sentences, in order. */
  readonly sentences: readonly string[];
}

/** The cut list of one roll as a person follows it with shears. */
export function cutSteps(roll: Roll, layup: Layup, reader: Reader): readonly CutStep[] {
  return roll.cuts.map((cut, i) => {
    const here = roll.placed.filter((placed) => placed.cut === cut.id);
    return {
      id: cut.id,
      number: i + 1,
      lengthM: cut.lengthM,
      pieces: cut.pieces.map((piece) => pieceName(piece, reader)),
      sentences: here.flatMap((placed) => [
        ...(placed.from === "offcut" ? [offcutSentence({ placed, cut, beside: here[0] }, reader)] : []),
        ...laySentences(placed, layup, reader),
        ...turnSentence(placed, reader),
      ]),
    };
  });
}

function offcutSentence(
  { placed, cut, beside }: { placed: Placed; cut: Roll["cuts"][number]; beside: Placed | undefined },
  reader: Reader,
): string {
  const t = tell(reader);
  const name = (id: string) => pieceName(id, reader);
  const fromM = placed.fromStartM - cut.fromStartM;
  const size = [length(placed.lengthM, "coarse"), length(placed.widthM, "coarse")] as const;
  const at = [length(fromM, "coarse"), length(placed.fromEdgeM, "coarse")] as const;
  return t`${name(placed.id)} comes out of what is left beside ${name(beside?.id ?? "")}: ${size[0]} long and ${size[1]} wide, from ${at[0]} along the cut and ${at[1]} in from its edge.`;
}

function laySentences(placed: Placed, layup: Layup, reader: Reader): readonly string[] {
  const t = tell(reader);
  const name = pieceName(placed.id, reader);
  const piece = layup.pieces.find(({ id }) => id === placed.piece);
  if (piece === undefined || piece.extent !== null) return [];
  if (placed.part !== "whole")
    return [t`Lay ${name} with its straight edge along the stringer line, over the other strip.`];
  if (layup.cutting === "pattern")
    return [
      t`Fold ${name} along its middle, lay the fold on the stringer line and cut both halves to the flat pattern.`,
    ];
  const pattern = layup.patterns.find(({ id }) => id === placed.pattern);
  const hangsM = pattern === undefined ? 0 : (placed.lengthM - pattern.lengthM) / 2;
  return [
    t`Fold ${name} along its middle, lay the fold on the stringer line and roll it out: ${length(hangsM)} hangs over at each end beyond the lap, to trim on the board.`,
  ];
}

/** A piece that lies across the roll is told; end for end makes no difference to a person. */
function turnSentence({ id, turnRad }: Placed, reader: Reader): readonly string[] {
  const t = tell(reader);
  if (Math.abs(Math.sin(turnRad)) < 0.5) return [];
  return [t`${pieceName(id, reader)} lies across the roll.`];
}
