import { catalogues } from "#catalogues";
import { englishName } from "./englishNames";
import type { Language } from "./Language";

/** The text of a language for an English one, or null where the language has none; English is its own, its ids read as words. */
export function findText(english: string, language: Language): string | null {
  if (language === "en") return englishName(english);
  const catalogue = catalogues[language] ?? {};
  return Object.hasOwn(catalogue, english) ? (catalogue[english] ?? null) : null;
}
