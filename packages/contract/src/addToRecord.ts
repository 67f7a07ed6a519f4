import { checkNames } from "./checks/checkNames";
import { checkResins } from "./checks/checkResins";
import type { BoardFile } from "./file/BoardFile";
import { takeOutForbidden } from "./reading/takeOutForbidden";
import { MOST_ENTRIES, recordEntrySchema } from "./schema/recordSchema";

/**
 * A file that was read, with entries at the end of its record; null where one of them does not fit, which `readBoardFile` then says
 * of the whole text. Only the entries are read: the rest of the file is as it was.
 */
export function addToRecord(file: BoardFile, entries: readonly unknown[]): BoardFile | null {
  const record = [...(file.record ?? []), ...entries];
  const isEach = entries.every(
    (entry) => takeOutForbidden(entry).length === 0 && recordEntrySchema.safeParse(entry).success,
  );
  if (!isEach || record.length > MOST_ENTRIES) return null;
  // No other check looks at the record.
  const faults = [...checkNames({ record }), ...checkResins({ record })];
  return faults.length === 0 ? ({ ...file, record } as BoardFile) : null;
}
