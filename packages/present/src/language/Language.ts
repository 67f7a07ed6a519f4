/** The languages that texts can be read in. English stands in the source; each other one is a folder of texts. */
export type Language = "en" | "de";
