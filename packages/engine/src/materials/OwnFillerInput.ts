/** A filler of the builder's own, in SI: the density of its grains, and how much of it goes into resin, by mass. */
export interface OwnFillerInput {
  readonly name?: string;
  readonly densityKgM3: number;
  readonly shareByMass: number;
}
