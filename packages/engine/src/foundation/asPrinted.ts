import { formatQuantity } from "./formatQuantity";
import { parseQuantity } from "./parseQuantity";
import type { Quantity } from "./quantity";

/** A quantity as a person reads it off the page and weighs it out, in SI: what is left of it once it is rounded to be shown. */
export function asPrinted(quantity: Quantity): number {
  const text = formatQuantity(quantity, "mm");
  const read = parseQuantity(text, quantity.dimension);
  if (!read.ok) throw new Error(`${text} is printed, and cannot be read: a fault of the program`);
  return read.value;
}
