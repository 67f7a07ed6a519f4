import { type BoardFileRead, formatBoardFile, readBoardFile } from "@lapline/contract";

interface Entry {
  readonly id: string;
  readonly text: string;
}

interface WithJournal {
  readonly text: string;
  /** The entries that the file came without. */
  readonly added: readonly string[];
  /** How the text reads with them. */
  readonly read: BoardFileRead;
}

/**
 * A board file with every entry of its journal in its record, each once by its id: those that it lacks stand at the end, in the order
 * in which they came. A file that lacks none stays as it is, to the byte.
 */
export function withJournal(text: string, journal: readonly Entry[]): WithJournal {
  const read = readBoardFile(text);
  if (!read.ok) return { text, added: [], read };
  const record = read.file.record ?? [];
  const there = new Set(record.map(({ id }) => id));
  const missing = journal.filter(({ id }) => !there.has(id));
  if (missing.length === 0) return { text, added: [], read };
  const entries = missing.map((entry) => JSON.parse(entry.text) as (typeof record)[number]);
  const merged = formatBoardFile({ ...read.file, record: [...record, ...entries] });
  return { text: merged, added: missing.map(({ id }) => id), read: readBoardFile(merged) };
}
