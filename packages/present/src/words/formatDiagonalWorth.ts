import type { Reader } from "../language/Reader";
import { showNumbers } from "../language/showNumbers";

/** What a millimetre at a mark changes its diagonal by, in millimetres, to a hundredth. */
export function formatDiagonalWorth(ratio: number, { language }: Reader): string {
  return showNumbers(ratio.toFixed(2), language);
}
