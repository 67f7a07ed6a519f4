import { type Phrase, say } from "../foundation/phrase";

/** What a zone is called in a sentence. */
export function nameZone(id: string): Phrase {
  const box = /^box-(\d+)$/.exec(id);
  return box === null ? say`${id.replaceAll("-", " ")}` : say`box ${box[1]!}`;
}
