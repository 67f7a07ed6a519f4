import type { Reader } from "../../language/Reader";
import { tellText } from "../../language/tellText";
import { finName } from "../../words/finName";

/** What a person calls a fin, coat, piece or step of the plan: the catalogue's word for its id, or the id read as words. */
export function nameWords(id: string, reader: Reader): string {
  const told = tellText(id, reader);
  return told === id ? finName(id) : told;
}
