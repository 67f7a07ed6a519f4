import type { Choices } from "./Choices";
import { repairEnd } from "./repairRows";
import { repairsByFace } from "./repairsByFace";
import { ROWS_OF_FILL } from "./rowsOfFill";
import { ROWS_OF_FINISH, ROWS_OF_SANDING } from "./rowsOfFinish";
import { ROWS_OF_GLASSED_FINS, rowsOfFittings } from "./rowsOfFittings";
import { ROWS_OF_FOAM } from "./rowsOfFoam";
import { ROWS_OF_LAMINATE } from "./rowsOfLaminate";
import type { SandThrough } from "./Standing";
import type { NeedRow, StepRow } from "./StepRow";

/**
 * The steps that this board calls for, in the order of the work, each after those it needs. Repairs stand after the
 * sanding, and what finishes the board waits for them.
 */
export function chooseRows(
  choices: Choices,
  sandThroughs: readonly SandThrough[],
  doneIds: ReadonlySet<string> = new Set(),
): readonly StepRow[] {
  const repairs = repairsByFace(sandThroughs, doneIds);
  const rows = [
    ...ROWS_OF_FOAM,
    ...rowsOfFittings("before-glass"),
    ...ROWS_OF_LAMINATE,
    ...rowsOfFittings("after-laminate"),
    ...ROWS_OF_GLASSED_FINS,
    ...ROWS_OF_FILL,
    ...rowsOfFittings("after-fill"),
    ...ROWS_OF_SANDING,
    ...repairs,
    ...ROWS_OF_FINISH,
  ].filter((row) => row.when(choices));
  const ids = new Set(rows.map(({ id }) => id));
  const afterRepairs = sandThroughs.map(
    (through): NeedRow => ({
      step: repairEnd(through),
      until: "hands-off",
      because: "water and dirt stay under what closes over them",
    }),
  );
  return rows.map((row) => ({
    ...row,
    needs: [...row.needs, ...(row.isAfterRepairs === true ? afterRepairs : [])].filter(
      ({ step, when }) => ids.has(step) && (when?.(choices) ?? true),
    ),
  }));
}
