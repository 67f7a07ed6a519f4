import type { Weight } from "./paperFonts";

/** Words as the font sets them, by their text: which glyphs, and how far apart. */
type ShapedWords = Record<string, object>;

/** Some Sheets' worth in each of two languages; a server that runs for months keeps no more than this and one document's. */
const WORDS_KEPT = 6000;

const shaped = new Map<Weight, ShapedWords>();

/**
 * What earlier documents have set in a weight, for a new one to go on with: shaping a word takes longer than drawing it, and gives the
 * same in every document.
 */
export function shapedWords(weight: Weight): ShapedWords {
  const known = shaped.get(weight);
  if (known !== undefined && Object.keys(known).length < WORDS_KEPT) return known;
  const words: ShapedWords = Object.create(null);
  shaped.set(weight, words);
  return words;
}
