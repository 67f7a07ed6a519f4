/** The languages that texts can be read in. English stands in the source; each other one is a folder of texts. */
export const LANGUAGES = ["en", "de"] as const;
export type Language = (typeof LANGUAGES)[number];
