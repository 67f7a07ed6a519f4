import { fillLines } from "../fillLines";
import type { Terminal } from "../Terminal";

/** Says that a board is not for water, in lines that a terminal does not break. */
export function tellBarred(sentence: string, terminal: Terminal): void {
  for (const line of fillLines(sentence.split(" "), { indent: "", hanging: "  " })) terminal.tell(line);
}
