const PER_MM = 10_000;

/** A sheet coordinate as text: to a ten-thousandth of a millimetre, so that 0.01 mm on a board holds at 1 to 40. */
export function formatCoordinate(valueMm: number): string {
  // Many thousands with each key: by arithmetic, which is much quicker than by text.
  return String(Math.round(valueMm * PER_MM) / PER_MM + 0);
}
