/** Whether a word is the SHA-256 of something, in hexadecimal: nothing else may name a file. */
export function isContentHash(word: string): boolean {
  return /^[0-9a-f]{64}$/.test(word);
}
