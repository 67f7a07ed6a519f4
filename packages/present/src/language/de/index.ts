import { WORDS } from "./words";

/** German, by subject; a text stands in one file only. */
export const DE: Readonly<Record<string, string>> = { ...WORDS };
