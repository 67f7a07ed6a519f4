import type { Sourced } from "./Sourced";

/** Molar gas constant, J/(mol K). */
export const GAS_CONSTANT: Sourced = { value: 8.314462618, source: "codata-2018" };
