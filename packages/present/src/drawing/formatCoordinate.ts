/** A sheet coordinate as text: to a ten-thousandth of a millimetre, so that 0.01 mm on a board holds at 1 to 40. */
export function formatCoordinate(valueMm: number): string {
  return String(Number(valueMm.toFixed(4)) + 0);
}
