import type { Sourced } from "./Sourced";

/** Salinity 35 at 20 °C gives 1025; brackish water and summer heat lie towards the low end, cold ocean towards the high one. */
export const SEA_WATER_KG_M3 = {
  value: 1025,
  low: 1020,
  high: 1028,
  source: "sea-water-memory",
} as const satisfies Sourced;
