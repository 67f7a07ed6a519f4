import { length } from "@lapline/engine";
import type { Reader } from "../language/Reader";
import { showQuantity } from "../language/showQuantity";

/** Finer than this a tolerance is between the marks of an inch tape. */
const MM_BELOW_M = 0.002;

/** How near something must come: small tolerances in millimetres in both systems, since 1 mm is not 1/32 in. */
export function formatTolerance(toleranceM: number, reader: Reader): string {
  return showQuantity(
    length(toleranceM, "fine"),
    toleranceM < MM_BELOW_M ? { ...reader, units: "mm" } : reader,
  );
}
