/** The colour in the `glass` part of a board file: tint or pigment over base by mass, by kind of coat. */
export interface TintInput {
  readonly tint?: { readonly laminate?: number; readonly fill?: number; readonly gloss?: number };
}
