/** A time in passed seconds, with the band that holds it about nine times in ten; an end that is not known is null. */
export interface Moment {
  readonly atS: number;
  readonly lowS: number | null;
  readonly highS: number | null;
}

/** When one coat on the board comes to each stage; null where it has no such stage, or where it is not known. */
export interface Film {
  readonly trim: Moment | null;
  readonly trimUntil: Moment | null;
  readonly tape: Moment | null;
  readonly tapeUntil: Moment | null;
  readonly flip: Moment | null;
  readonly recoat: Moment | null;
  readonly recoatUntil: Moment | null;
  readonly sandable: Moment | null;
  readonly full: Moment | null;
}

/** When hands were on, in passed seconds. */
export interface HandsOn {
  readonly beginS: number;
  readonly endS: number;
}
