/** What the wet clock tells of, in the trade's words. */
export type ClockKind = "spread" | "trim" | "tape" | "flip" | "recoat" | "sand";

/** One time of a coat's wet clock. */
export interface ClockMoment {
  readonly coat: string;
  readonly kind: ClockKind;
  /** Milliseconds as the browser's clock counts them. */
  readonly atMs: number;
  /** The band that holds it about nine times in ten; null where the plan has none. */
  readonly lowMs: number | null;
  readonly highMs: number | null;
  /** By when; null where it does not matter. */
  readonly untilMs: number | null;
}
