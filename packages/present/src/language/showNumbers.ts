import type { Language } from "./Language";

/** Text of a quantity as a language writes its numbers: German sets the decimal comma (DIN 1333, from memory). */
export function showNumbers(text: string, language: Language): string {
  return language === "de" ? text.replace(/(\d)\.(?=\d)/g, "$1,") : text;
}
