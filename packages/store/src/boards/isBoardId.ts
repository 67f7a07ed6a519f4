const BOARD_ID = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const LONGEST = 64;

/** Whether a word may name a board in the store: lower-case letters, digits and single hyphens, at most 64 characters. */
export function isBoardId(word: string): boolean {
  return word.length <= LONGEST && BOARD_ID.test(word);
}
