import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";

const STATION = /^survey\.stations\[(\d+)\]\.(\w+)$/;

/** A reading's name for a person: `station 3, left` (stations counted from one, as they stand in the survey). */
export function readingName(path: string, reader: Reader): string {
  const t = tell(reader);
  const [, index, what] = STATION.exec(path) ?? [];
  if (index === undefined || what === undefined) return path.replace(/^survey\./, "");
  return t`station ${Number(index) + 1}, ${what}`;
}
