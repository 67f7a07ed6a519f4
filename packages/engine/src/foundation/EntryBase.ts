/** What every entry of a board's record has. */
export interface EntryBase {
  readonly id: string;
  /** Local wall time. */
  readonly at?: string;
  /** The entry that this one replaces. */
  readonly corrects?: string;
}
