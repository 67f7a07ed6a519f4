import type { Finding } from "@lapline/engine";

/** Concerns a field of the shop's form, and stands beneath it; what the days say stands with the days. */
export function isOfShop({ path, code }: Finding): boolean {
  return /^shop\.(temperature|humidity|resinTemperature|people|hours)/.test(path) && code.startsWith("mix.");
}
