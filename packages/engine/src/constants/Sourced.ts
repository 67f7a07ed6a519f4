import type { SourceId } from "../sources/sources";

/** A constant with where it comes from; `low` and `high` are the range that the source or the trade gives. */
export interface Sourced {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly source: SourceId;
}
