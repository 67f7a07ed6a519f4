/** A tint or pigment of the builder's own, in SI. */
export interface OwnTintInput {
  readonly name?: string;
  /** The most that its sheet allows over base, by mass. */
  readonly mostShare?: number;
}
