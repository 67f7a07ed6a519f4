import type { RollLay } from "./RollLay";

/** A stretch of the roll that is drawn in one row; rows of pieces that pass each other's ends overlap by as much. */
export interface RollRow {
  readonly fromM: number;
  readonly toM: number;
  /** What is drawn whole in this row. */
  readonly ids: readonly string[];
}

const SLACK_M = 1e-6;

/** The roll in rows no longer than there is room for, pieces and cuts whole. @param roomM as long as the longest of them at least */
export function rowsOfRoll(lay: RollLay, roomM: number): readonly RollRow[] {
  const rows: Array<{ fromM: number; toM: number; ids: string[] }> = [];
  for (const { fromM, toM, ids } of spansOf(lay)) {
    const row = rows.at(-1);
    if (row === undefined || Math.max(row.toM, toM) - row.fromM > roomM + SLACK_M)
      rows.push({ fromM, toM, ids: [...ids] });
    else {
      row.toM = Math.max(row.toM, toM);
      row.ids.push(...ids);
    }
  }
  return rows;
}

/** What must not be broken, in order: each cut, or where there are none each piece. */
function spansOf({ placed, cuts }: RollLay): RollRow[] {
  const pieces = placed
    .map(({ id, points }): RollRow => {
      const alongM = points.map((point) => point.alongM);
      return { fromM: Math.min(...alongM), toM: Math.max(...alongM), ids: [id] };
    })
    .sort((a, b) => a.fromM - b.fromM);
  return (
    cuts?.map((cut) => {
      const within = pieces.filter(
        ({ fromM, toM }) => fromM >= cut.fromM - SLACK_M && toM <= cut.toM + SLACK_M,
      );
      return { ...cut, ids: within.flatMap(({ ids }) => ids) };
    }) ?? pieces
  );
}
