import type { Sourced } from "./Sourced";

/** A powder stirred into resin: it thickens, lightens or reinforces it. */
export interface Filler {
  readonly id: string;
  /** A kind of filler, never a make. */
  readonly name: string;
  /** Of the grains themselves, not of the heap. */
  readonly densityKgM3: Sourced;
  /** Filler over mixed resin by mass, stirred to what its use asks. */
  readonly shareByMass: Sourced;
}

/** The fillers that a board file can name. */
export const FILLERS: Readonly<Record<string, Filler>> = {
  // Strong and heavy: around boxes and plugs. It is E-glass, cut short.
  "milled-fibre": {
    id: "milled-fibre",
    name: "milled glass fibre",
    densityKgM3: { value: 2550, low: 2550, high: 2580, source: "e-glass-sheet" },
    shareByMass: { value: 0.25, low: 0.1, high: 0.5, source: "common-practice" },
  },
  // Light and easily sanded: tears, seals, spot fills that carry nothing.
  "hollow-spheres": {
    id: "hollow-spheres",
    name: "hollow glass spheres",
    densityKgM3: { value: 200, low: 125, high: 300, source: "filler-memory" },
    shareByMass: { value: 0.1, low: 0.05, high: 0.25, source: "common-practice" },
  },
  // A little of it keeps resin from running off.
  silica: {
    id: "silica",
    name: "colloidal silica",
    densityKgM3: { value: 2200, low: 2100, high: 2250, source: "filler-memory" },
    shareByMass: { value: 0.04, low: 0.02, high: 0.08, source: "common-practice" },
  },
};
