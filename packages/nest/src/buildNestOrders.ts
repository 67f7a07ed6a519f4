import { outlineOnRoll, type Plan, SHEARS_GAP_M } from "@lapline/engine";
import type { NestOrder, NestPiece } from "./NestOrder";

export interface BoardToCut {
  /** Told in front of its pieces' names where there are several boards. */
  readonly name: string;
  readonly plan: Plan;
}

/** Two board files mean one roll where they give its width as near as this. */
const SAME_ROLL_M = 0.001;

interface Roll {
  readonly cloth: string;
  widthM: number;
  readonly pieces: NestPiece[];
}

/**
 * What is cut of each cloth for one or several boards: every piece by its flat shape, as the plan has it, strips of pieces with a
 * seam apart. Boards that give another width for a cloth get a roll of their own, unless a width is set here for all.
 * @param widthsM by the cloth's id
 */
export function buildNestOrders(
  boards: readonly BoardToCut[],
  widthsM: Readonly<Record<string, number>> = {},
): readonly NestOrder[] {
  const rolls: Roll[] = [];
  for (const { name, plan } of boards) {
    const { cutplan, layup } = plan;
    if (cutplan === null || layup === null) continue;
    for (const { cloth, widthM: ownM, placed } of cutplan.rolls) {
      const roll = findRoll(rolls, cloth, widthsM[cloth] ?? ownM);
      for (const each of placed) {
        const pattern = layup.patterns.find(({ id }) => id === each.pattern);
        if (pattern === undefined) throw new Error(`${each.id} has no flat shape: a fault of the program`);
        roll.pieces.push({
          id: boards.length > 1 ? `${name} ${each.id}` : each.id,
          points: outlineOnRoll(pattern, { ...each, turnRad: 0, fromStartM: 0, fromEdgeM: 0 }),
          turnsRad: pattern.turnsRad,
        });
      }
    }
  }
  return rolls.map(({ cloth, widthM, pieces }) => ({ cloth, widthM, gapM: SHEARS_GAP_M.value, pieces }));
}

/** The narrower of two widths that are the same roll, so that nothing hangs over. */
function findRoll(rolls: Roll[], cloth: string, widthM: number): Roll {
  const known = rolls.find((roll) => roll.cloth === cloth && Math.abs(roll.widthM - widthM) <= SAME_ROLL_M);
  if (known !== undefined) {
    known.widthM = Math.min(known.widthM, widthM);
    return known;
  }
  const roll: Roll = { cloth, widthM, pieces: [] };
  rolls.push(roll);
  return roll;
}
