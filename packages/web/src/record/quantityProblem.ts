import { type Phrase, parseQuantity } from "@lapline/engine";

/** What keeps a text from being a quantity. */
export function quantityProblem(text: string, dimension: "mass" | "length"): Phrase | undefined {
  const read = parseQuantity(text, dimension);
  return read.ok ? undefined : read.says;
}
