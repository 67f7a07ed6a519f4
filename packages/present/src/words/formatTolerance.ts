import { formatQuantity, length, type Units } from "@lapline/engine";

/** Finer than this a tolerance is between the marks of an inch tape. */
const MM_BELOW_M = 0.002;

/** How near something must come: small tolerances in millimetres in both systems, since 1 mm is not 1/32 in. */
export function formatTolerance(toleranceM: number, units: Units): string {
  return formatQuantity(length(toleranceM, "fine"), toleranceM < MM_BELOW_M ? "mm" : units);
}
