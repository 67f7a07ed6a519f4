import type { Quantity } from "@lapline/engine";
import { formatTolerance, type Reader, showQuantity } from "@lapline/present";

/** How near a reading must come, in words. */
export function toleranceWords(of: Quantity, reader: Reader): string {
  return of.dimension === "length" ? formatTolerance(of.value, reader) : showQuantity(of, reader);
}
