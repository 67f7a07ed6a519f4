import type { Sourced } from "./Sourced";

/** Fins that are glassed to the board: cloth over each side, run out onto the bottom, and a filled corner at the foot. */
export const GLASSED_FIN = {
  layersASide: { value: 2, low: 1, high: 3, source: "common-practice" },
  /** How far the cloth runs out onto the bottom, and past the base ahead and behind. */
  footM: { value: 0.04, low: 0.025, high: 0.06, source: "common-practice" },
  /** Side of a fin over its base times its depth. */
  planShare: { value: 0.62, low: 0.55, high: 0.7, source: "common-practice" },
  /** Radius of the filled corner at the foot, rope and resin. */
  filletM: { value: 0.008, low: 0.005, high: 0.012, source: "common-practice" },
  /** From base to tip, where the board file gives none. */
  depthM: { value: 0.115, low: 0.1, high: 0.13, source: "common-practice" },
  /** From the trailing end to the leading end, where the board file gives none. */
  baseM: { value: 0.11, low: 0.09, high: 0.12, source: "common-practice" },
} as const satisfies Record<string, Sourced>;
