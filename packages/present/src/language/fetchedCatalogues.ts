import type { Catalogues } from "./Catalogues";
import type { Language } from "./Language";

/** The languages that were asked for: a reader of English waits for no other. */
export const catalogues: Catalogues = {};

/** Fetches a language's texts once; rejects where they cannot be fetched. */
export async function loadLanguage(language: Language): Promise<void> {
  if (language === "en" || catalogues[language] !== undefined) return;
  catalogues[language] = (await import("./de")).DE;
}

/** Fetches what a language says of how numbers came about, for a reader who asks; rejects where it cannot be fetched. */
export async function loadWorkings(language: Language): Promise<void> {
  if (language === "en") return;
  await loadLanguage(language);
  const { DE_WORKINGS } = await import("./de/workings");
  catalogues[language] = { ...catalogues[language], ...DE_WORKINGS };
}
