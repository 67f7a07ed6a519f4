import type { Sourced } from "./Sourced";

/** Woods that stringers are cut from, as seasoned in the shop. */
export interface Wood {
  readonly id: string;
  readonly name: string;
  readonly densityKgM3: Sourced;
}

/** Taken where a stringer is given without its wood. */
export const DEFAULT_WOOD = "basswood";

/** How thick stringers are cut. */
export const USUAL_STRINGER_M = { low: 0.003, high: 0.006, source: "common-practice" } as const;

/** Thicker than this it is no stringer but a reading gone wrong. */
export const MOST_STRINGER_M: Sourced = { value: 0.05, source: "convention" };

export const WOODS: Readonly<Record<string, Wood>> = {
  // 26 lb/ft³ air-dry.
  basswood: {
    id: "basswood",
    name: "basswood",
    densityKgM3: { value: 416, low: 370, high: 460, source: "wood-tables" },
  },
  balsa: {
    id: "balsa",
    name: "balsa",
    densityKgM3: { value: 170, low: 110, high: 230, source: "wood-tables" },
  },
  spruce: {
    id: "spruce",
    name: "spruce",
    densityKgM3: { value: 450, low: 400, high: 500, source: "wood-tables" },
  },
  cedar: {
    id: "cedar",
    name: "red cedar",
    densityKgM3: { value: 380, low: 330, high: 430, source: "wood-tables" },
  },
  paulownia: {
    id: "paulownia",
    name: "paulownia",
    densityKgM3: { value: 280, low: 240, high: 320, source: "wood-memory" },
  },
  plywood: {
    id: "plywood",
    name: "birch plywood",
    densityKgM3: { value: 680, low: 620, high: 740, source: "wood-memory" },
  },
};
