/** When a document is made: the moment for the file, and the date as it is printed. */
export interface MadeOn {
  readonly instant: Date;
  /** `2026-04-11`, where the person who prints it is. */
  readonly date: string;
}
