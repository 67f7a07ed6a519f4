import type { Dimension } from "@lapline/engine";
import { siOf } from "./siOf";

/** To a millionth of an inch: finer than any fraction on a tape, and free of round-off's last digits. */
const DECIMALS = 6;

/**
 * A quantity as a bare number of a unit, where that is the very same quantity; null where it would have to be rounded, as
 * 111 mm in inches. `4 3/8 in` is 4.375 of an inch.
 */
export function bareNumber(text: string, dimension: Dimension, unit: string): number | null {
  const quantity = siOf(text, dimension);
  const one = siOf(`1 ${unit}`, dimension);
  if (quantity === null || one === null) return null;
  const number = Number((quantity / one).toFixed(DECIMALS));
  return siOf(`${number} ${unit}`, dimension) === quantity ? number : null;
}
