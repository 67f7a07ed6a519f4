import { type Reader, tell, tellText } from "@lapline/present";

/** What stood on the scale: the shaped blank, or the board after a coat. */
export function stageName(id: string, reader: Reader): string {
  return id === "blank" ? tell(reader)`shaped blank` : tellText(id, reader);
}
