const STATION = /^survey\.stations\[(\d+)\]\.(\w+)$/;

/** A reading's name for a person: `station 3, left` (stations counted from one, as they stand in the survey). */
export function readingName(path: string): string {
  const [, index, what] = STATION.exec(path) ?? [];
  return index === undefined ? path.replace(/^survey\./, "") : `station ${Number(index) + 1}, ${what}`;
}
