import type { SolidPlace } from "./SolidPlace";

export const COLOURING_IDS = ["difference", "film", "skin"] as const;
export type ColouringId = (typeof COLOURING_IDS)[number];

/** One step of a scale: from `fromM` up to the next one's, in one colour. */
export interface ColourBand {
  /** Open to below where it is null. */
  readonly fromM: number | null;
  /** Open to above where it is null. */
  readonly toM: number | null;
  /** The token in `tokens.css`, without the dashes. */
  readonly token: string;
}

/** What the solid shows in colour: a value of the plan at every place, and the steps of its scale. */
export interface Colouring {
  readonly id: ColouringId;
  readonly bands: readonly ColourBand[];
  valueAt(place: SolidPlace): number;
}

/** The step that a value stands in. */
export function bandOf(bands: readonly ColourBand[], valueM: number): number {
  const at = bands.findIndex(({ toM }) => toM === null || valueM < toM);
  return at < 0 ? bands.length - 1 : at;
}

const STEPS_M = [1e-5, 2e-5, 5e-5, 1e-4, 2e-4, 5e-4, 1e-3, 2e-3, 5e-3, 1e-2];
const DIVERGING = 7;
const SEQUENTIAL = 6;

/** Seven steps about nought, the middle one without a colour; wide enough that only a twentieth step would be needed beyond. */
export function divergingBands(mostM: number): readonly ColourBand[] {
  const half = (DIVERGING - 2) / 2;
  const stepM = roundStep(Math.abs(mostM) / half);
  return Array.from({ length: DIVERGING }, (_, i) => ({
    fromM: i === 0 ? null : (i - 1 - half) * stepM,
    toM: i === DIVERGING - 1 ? null : (i - half) * stepM,
    token: `solid-d${i + 1}`,
  }));
}

/** Up to six round steps from the least value to the most, each darker than the one before. */
export function sequentialBands(leastM: number, mostM: number): readonly ColourBand[] {
  const stepM = roundStep((mostM - leastM) / (SEQUENTIAL - 1));
  const first = Math.floor(leastM / stepM + 1e-9);
  const count = Math.max(Math.floor(mostM / stepM + 1e-9) - first + 1, 1);
  return Array.from({ length: count }, (_, i) => ({
    fromM: (first + i) * stepM,
    toM: (first + i + 1) * stepM,
    token: `solid-s${i + 1}`,
  }));
}

function roundStep(leastM: number): number {
  return STEPS_M.find((stepM) => stepM >= leastM - 1e-12) ?? leastM;
}
