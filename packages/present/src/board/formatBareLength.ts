import { formatQuantity, length, type Quantity, type Units } from "@lapline/engine";

/** A length as a figure on a drawing or in a table whose unit is stated once: `7 1/8`, `181`; feet keep their marks. */
export function formatBareLength(valueM: number, units: Units, grain?: Quantity["grain"]): string {
  return formatQuantity(length(valueM, grain), units).replace(/ (in|mm)$/, "");
}
