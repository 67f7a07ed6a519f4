/** A field in three files; undefined where a file does not have it. */
export interface Three {
  /** What both changes began from. */
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}
