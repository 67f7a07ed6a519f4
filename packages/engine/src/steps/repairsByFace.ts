import { repairRows } from "./repairRows";
import type { SandThrough } from "./Standing";
import type { NeedRow, StepRow } from "./StepRow";

/**
 * The steps of all repairs. What is still open is closed on one face first, the one that is begun or came first, and the board is turned onto
 * a spot of resin only once that can bear it.
 */
export function repairsByFace(
  sandThroughs: readonly SandThrough[],
  doneIds: ReadonlySet<string>,
): readonly StepRow[] {
  const repairs = sandThroughs.map((through) => ({ face: through.entry.face, rows: repairRows(through) }));
  const isDone = ({ id }: StepRow) => doneIds.has(id);
  const open = repairs.filter(({ rows }) => !rows.every(isDone));
  const first = (open.find(({ rows }) => rows.some(isDone)) ?? open[0])?.face;
  const turns = open
    .filter(({ face }) => face === first)
    .flatMap(({ rows }) => rows.filter(({ labour }) => labour.kind === "coat").slice(-1))
    .map(({ id }): NeedRow => ({ step: id, until: "flip", because: "the board lies on it now" }));
  const waiting = open.filter(({ face }) => face !== first);
  return [
    ...repairs.filter((repair) => !waiting.includes(repair)).flatMap(({ rows }) => rows),
    ...waiting.flatMap(({ rows }) => {
      const next = rows.find((row) => !isDone(row));
      return rows.map((row) => (row === next ? { ...row, needs: [...row.needs, ...turns] } : row));
    }),
  ];
}
