interface Cuts {
  readonly count: number;
  readonly stepMm: number;
  /** Places that no joint should run through. */
  readonly keepWhole: readonly number[];
}

/** Farther from a joint than this is far enough. */
const CLEAR_MM = 15;

/**
 * Where a row of pages starts, so that their joints keep clear of the places that matter: the pages are a little longer together
 * than what they show, and can be slid by the rest. The middle is taken where nothing speaks against it.
 * @returns the start of the first page, nought or less, in the drawing's millimetres
 */
export function chooseOffset(lengthMm: number, { count, stepMm, keepWhole }: Cuts): number {
  const spareMm = count * stepMm - lengthMm;
  const joints = Array.from({ length: count - 1 }, (_, i) => (i + 1) * stepMm);
  const clearance = (startMm: number) =>
    Math.min(
      CLEAR_MM,
      ...joints.flatMap((joint) => keepWhole.map((place) => Math.abs(startMm + joint - place))),
    );
  const middle = -spareMm / 2;
  const steps = Array.from({ length: Math.floor(spareMm / 2) + 1 }, (_, i) => i);
  const starts = steps.flatMap((step) => [middle - step, middle + step]);
  return starts.reduce((best, start) => (clearance(start) > clearance(best) ? start : best), middle);
}
