import type { Language } from "./Language";

/** Texts by their English, for each language that is at hand. */
export type Catalogues = Partial<Record<Exclude<Language, "en">, Readonly<Record<string, string>>>>;
