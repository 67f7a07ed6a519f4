/** One column of a table, by its name without the unit. */
export interface CsvColumn {
  readonly name: string;
  /** What its cells hold; words have no unit. */
  readonly holds: "length" | "angle" | "words";
  /** Written for the reader's eye and left aside when the table comes back. */
  readonly onlyOut?: true;
}
