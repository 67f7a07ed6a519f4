/** A part of the page: a heading and its lines, each at most 80 letters. */
export interface Block {
  readonly title: string;
  readonly lines: readonly string[];
}
