import { catalogues } from "#catalogues";
import { englishName } from "./englishNames";
import type { Language } from "./Language";

/** A repair's coats and steps are counted: `repair-1-patch`. */
const REPAIR = /^repair-(\d+)-(\w+)$/;

const REPAIR_PARTS: Readonly<Record<string, string>> = {
  dry: "repair dry",
  feather: "repair feather",
  patch: "repair patch",
  fill: "repair fill",
  sand: "repair sand",
};

function nameRepair(number: string, part: string, language: Language): string {
  const word = (english: string) => findText(english, language) ?? english;
  return `${word("repair")} ${number}, ${word(REPAIR_PARTS[part] ?? part).replace("repair ", "")}`;
}

/** The text of a language for an English one, or null where the language has none; English is its own, its ids read as words. */
export function findText(english: string, language: Language): string | null {
  const [, number, part] = REPAIR.exec(english) ?? [];
  if (number !== undefined && part !== undefined) return nameRepair(number, part, language);
  if (language === "en") return englishName(english);
  const catalogue = catalogues[language] ?? {};
  return Object.hasOwn(catalogue, english) ? (catalogue[english] ?? null) : null;
}
