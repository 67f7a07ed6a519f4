import type { Sourced } from "./Sourced";

/** What a cloth's threads are made of. */
export interface Fibre {
  readonly id: FibreId;
  readonly name: string;
  readonly densityKgM3: Sourced;
  /** Along the thread. */
  readonly modulusPa: Sourced;
}

export type FibreId = "e-glass" | "s-glass" | "carbon" | "basalt";

/** Fibres that cloth for boards is woven of. */
export const FIBRES = {
  // ASTM C693 on a glass property sheet: 2550 to 2580; the lower figure is the one that laminate tables use.
  "e-glass": {
    id: "e-glass",
    name: "E-glass",
    densityKgM3: { value: 2550, low: 2550, high: 2580, source: "e-glass-sheet" },
    modulusPa: { value: 70e9, low: 69e9, high: 72e9, source: "e-glass-sheet" },
  },
  "s-glass": {
    id: "s-glass",
    name: "stronger glass",
    densityKgM3: { value: 2480, low: 2460, high: 2490, source: "s-glass-memory" },
    modulusPa: { value: 86e9, low: 84e9, high: 90e9, source: "s-glass-memory" },
  },
  carbon: {
    id: "carbon",
    name: "carbon",
    densityKgM3: { value: 1780, low: 1750, high: 1820, source: "fibre-memory" },
    modulusPa: { value: 230e9, low: 220e9, high: 240e9, source: "fibre-memory" },
  },
  basalt: {
    id: "basalt",
    name: "basalt",
    densityKgM3: { value: 2650, low: 2600, high: 2750, source: "fibre-memory" },
    modulusPa: { value: 87e9, low: 80e9, high: 95e9, source: "fibre-memory" },
  },
} as const satisfies Record<string, Fibre>;
