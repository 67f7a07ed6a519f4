import { formatQuantity, type Quantity } from "@lapline/engine";
import type { Reader } from "./Reader";
import { showNumbers } from "./showNumbers";

/** A quantity as its reader writes it: their units, their decimal sign. */
export function showQuantity(quantity: Quantity, { units, language }: Reader): string {
  return showNumbers(formatQuantity(quantity, units), language);
}
