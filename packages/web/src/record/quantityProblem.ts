import { parseQuantity } from "@lapline/engine";

/** What keeps a text from being a quantity. */
export function quantityProblem(text: string, dimension: "mass" | "length"): string | undefined {
  const read = parseQuantity(text, dimension);
  return read.ok ? undefined : read.reason;
}
