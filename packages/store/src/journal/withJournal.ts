import { addToRecord, formatBoardFile, LARGEST_BOARD_FILE_BYTES } from "@lapline/contract";
import { type FileRead, readOnce, remember } from "../boards/readOnce";

interface Entry {
  readonly id: string;
  readonly text: string;
}

interface WithJournal {
  readonly text: string;
  /** The entries that the file came without. */
  readonly added: readonly string[];
  /** How the text reads with them. */
  readonly read: FileRead;
}

/**
 * A board file with every entry of its journal in its record, each once by its id: those that it lacks stand at the end, in the order
 * in which they came. A file that lacks none stays as it is, to the byte.
 */
export function withJournal(text: string, journal: readonly Entry[]): WithJournal {
  const read = readOnce(text);
  if (!read.ok) return { text, added: [], read };
  const record = read.file.record ?? [];
  const there = new Set(record.map(({ id }) => id));
  const missing = journal.filter(({ id }) => !there.has(id));
  if (missing.length === 0) return { text, added: [], read };
  const added = missing.map(({ id }) => id);
  const entries = missing.map((entry) => JSON.parse(entry.text) as (typeof record)[number]);
  const file = addToRecord(read.file, entries);
  const merged = formatBoardFile(file ?? { ...read.file, record: [...record, ...entries] });
  // Only where something is wrong is the whole read again, to say what and on which line.
  if (file === null || merged.length > LARGEST_BOARD_FILE_BYTES)
    return { text: merged, added, read: readOnce(merged) };
  remember(merged, file);
  return { text: merged, added, read: { ok: true, file } };
}
