/** Room for a number behind it within the longest id. */
const LONGEST = 60;
const WITHOUT_LETTERS = "board";

/** Ids for a board of this name, the plainest first, then numbered from 2 on; each fit to name a board in the store. */
export function* idsFromName(name: string): Generator<string, never> {
  const plain = name
    .replaceAll("ß", "ss")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST)
    .replace(/^-|-$/g, "");
  const base = plain === "" ? WITHOUT_LETTERS : plain;
  yield base;
  for (let number = 2; ; number++) yield `${base}-${number}`;
}
