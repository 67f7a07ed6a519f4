import type { Sourced } from "./Sourced";

/** What a brushed or poured coat is, per square metre of the face it is poured on. */
export interface CoatFilm {
  readonly pouredKgM2: Sourced;
  /** Share of what is poured that runs off the rails. */
  readonly runOffShare: Sourced;
}

/** Poured 300 to 450 g/m². */
export const FILL_FILM: CoatFilm = {
  pouredKgM2: { value: 0.35, low: 0.3, high: 0.45, source: "common-practice" },
  runOffShare: { value: 0.2, low: 0.1, high: 0.3, source: "common-practice" },
};

/** Poured 120 to 250 g/m², thinned. */
export const GLOSS_FILM: CoatFilm = {
  pouredKgM2: { value: 0.18, low: 0.12, high: 0.25, source: "common-practice" },
  runOffShare: { value: 0.2, low: 0.1, high: 0.3, source: "common-practice" },
};

/** Resin squeegeed into open foam before the glass, light filler in it not counted. */
export const SEAL_POURED_KG_M2: Sourced = { value: 0.15, low: 0.1, high: 0.2, source: "common-practice" };

/**
 * Open volume of the weave that the first coat after the laminate fills, as a share of the outer ply's thickness. Chosen so
 * that a fill coat on 4 and 6 oz cloth leaves the net film that the trade knows, 150 to 250 g/m².
 */
export const WEAVE_OPEN_SHARE: Sourced = { value: 0.25, low: 0.15, high: 0.4, source: "common-practice" };

/** Film left on each part of the board over the film in the middle of its face: it runs thin over the rails. */
export const FILM_SHARE_BY_PLACE = {
  flat: { value: 1, source: "convention" },
  lap: { value: 0.8, low: 0.6, high: 1, source: "common-practice" },
  edge: { value: 0.6, low: 0.4, high: 0.8, source: "common-practice" },
} as const satisfies Record<string, Sourced>;
