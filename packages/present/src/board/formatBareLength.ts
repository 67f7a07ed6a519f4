import { length, type Quantity } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

/** A length as a figure on a drawing or in a table whose unit is stated once: `7 1/8`, `181`; feet keep their marks. */
export function formatBareLength(valueM: number, reader: Reader, grain?: Quantity["grain"]): string {
  return showQuantity(length(valueM, grain), reader).replace(/ (in|mm)$/, "");
}
