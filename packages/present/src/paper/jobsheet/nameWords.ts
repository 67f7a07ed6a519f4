import type { Reader } from "../../language/Reader";
import { tellText } from "../../language/tellText";
import { finName } from "../../words/finName";

/** `deck-2`, `patch-1`: pieces of one kind are counted. */
const NUMBERED = /^(\D+)-(\d+)$/;

/** What a person calls a fin, coat, piece or step of the plan: the catalogue's word for its id, or the id read as words. */
export function nameWords(id: string, reader: Reader): string {
  const [, kind, number] = NUMBERED.exec(id) ?? [];
  if (kind !== undefined) return `${nameWords(kind, reader)} ${number}`;
  const told = tellText(id, reader);
  return told === id ? finName(id, reader) : told;
}
