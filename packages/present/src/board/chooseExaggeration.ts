/** Beyond 20 times a tape's own uncertainty would look like a fault of the board. */
const STEPS = [20, 10, 5, 2] as const;

/**
 * How many times a small distance is to be drawn so that it can be seen and still fits: the largest of the steps
 * that keeps it within its room on the sheet, else 1. Whoever draws states it.
 * @param sizeMm what it would measure on the sheet at true scale
 * @param roomMm what it may measure
 * @param steps the factors to choose from, largest first; 20, 10, 5, 2 if left out
 */
export function chooseExaggeration(sizeMm: number, roomMm: number, steps: readonly number[] = STEPS): number {
  return steps.find((step) => sizeMm * step <= roomMm) ?? 1;
}
