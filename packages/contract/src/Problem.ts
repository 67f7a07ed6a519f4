/** One thing in a board file that cannot be taken as it stands. */
export interface Problem {
  /** The field: `survey.stations[2].left`; `(file)` for the file as a whole. */
  readonly path: string;
  /** What was read there, short enough and safe to print. */
  readonly read: string;
  /** What would be right. */
  readonly message: string;
  /** The line of the file, from 1, where it is known. */
  readonly line?: number;
}
