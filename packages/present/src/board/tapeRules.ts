import type { Units } from "@lapline/engine";

interface TapeRule {
  /** From the finest division on; `share` is how much of the tape's width a tick takes. */
  readonly steps: ReadonlyArray<{ readonly everyM: number; readonly share: number }>;
  /** What is printed on the tape at this place; null where nothing is. */
  figure(tapeM: number): string | null;
}

/** How the two kinds of tape are printed: inches with a figure at each foot, or centimetres with one at each 20 cm. */
export const TAPE_RULES: Readonly<Record<Units, TapeRule>> = {
  inch: {
    steps: [
      { everyM: 0.0254, share: 0.3 },
      { everyM: 0.0762, share: 0.45 },
      { everyM: 0.3048, share: 1 },
    ],
    figure: (tapeM) => (isWhole(tapeM / 0.3048) ? `${Math.round(tapeM / 0.3048)}'` : null),
  },
  mm: {
    steps: [
      { everyM: 0.01, share: 0.3 },
      { everyM: 0.05, share: 0.45 },
      { everyM: 0.2, share: 1 },
    ],
    figure: (tapeM) => (isWhole(tapeM / 0.2) ? `${Math.round(tapeM * 1000)}` : null),
  },
};

function isWhole(ratio: number): boolean {
  return Math.abs(ratio - Math.round(ratio)) < 1e-6;
}
