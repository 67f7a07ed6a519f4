import { type Dimension, parseQuantity } from "@lapline/engine";

/** A quantity in SI; null where it cannot be read. */
export function siOf(text: string, dimension: Dimension): number | null {
  const parsed = parseQuantity(text, dimension);
  return parsed.ok ? parsed.value : null;
}
