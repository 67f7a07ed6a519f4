import { formatPhrase, type Phrase } from "@lapline/engine";

/** One thing in a board file that cannot be taken as it stands. */
export interface Problem {
  /** The field: `survey.stations[2].left`; `(file)` for the file as a whole. */
  readonly path: string;
  /** What was read there, short enough and safe to print. */
  readonly read: string;
  /** What would be right, in English. */
  readonly message: string;
  /** The same for a reader in another language. */
  readonly says: Phrase;
  /** The line of the file, from 1, where it is known. */
  readonly line?: number;
}

export function problemOf(path: string, read: string, says: Phrase): Problem {
  return { path, read, message: formatPhrase(says, "mm"), says };
}
