import { catalogues } from "#catalogues";
import type { Language } from "./Language";

/** The text of a language for an English one, or null where the language has none; English is its own. */
export function findText(english: string, language: Language): string | null {
  if (language === "en") return english;
  const catalogue = catalogues[language] ?? {};
  return Object.hasOwn(catalogue, english) ? (catalogue[english] ?? null) : null;
}
