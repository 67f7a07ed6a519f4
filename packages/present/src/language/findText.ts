import { DE } from "./de";
import type { Language } from "./Language";

const CATALOGUES: Readonly<Record<Exclude<Language, "en">, Readonly<Record<string, string>>>> = { de: DE };

/** The text of a language for an English one, or null where the language has none; English is its own. */
export function findText(english: string, language: Language): string | null {
  if (language === "en") return english;
  const catalogue = CATALOGUES[language];
  return Object.hasOwn(catalogue, english) ? (catalogue[english] ?? null) : null;
}
