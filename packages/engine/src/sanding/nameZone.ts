import { type Phrase, say } from "../foundation/phrase";

const NAMES: Readonly<Record<string, string>> = {
  "deck-foot": "under the back foot",
  "rail-left": "left rail",
  "rail-right": "right rail",
  "lap-deck": "lap on the deck",
  "lap-bottom": "lap on the bottom",
  tail: "tail edge",
  nose: "nose edge",
};

/** What a zone is called in a sentence. */
export function nameZone(id: string): Phrase {
  const box = /^box-(\d+)$/.exec(id);
  return box === null ? say`${NAMES[id] ?? id}` : say`box ${box[1]!}`;
}
