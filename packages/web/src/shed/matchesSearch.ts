import type { BoardEntry } from "../api/boardClient";

/** Every word of the search stands somewhere in the board's name or its rider's, in small or large letters, with or without accents. */
export function matchesSearch({ name, rider }: Pick<BoardEntry, "name" | "rider">, search: string): boolean {
  const text = plain(`${name} ${rider ?? ""}`);
  return plain(search)
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** A typed apostrophe finds the one that a phone's keyboard sets. */
function plain(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[’′]/g, "'")
    .replace(/[“”″]/g, '"')
    .toLowerCase()
    .trim();
}
