import type { Catalogues } from "./Catalogues";
import { DE } from "./de";
import type { Language } from "./Language";

/** Every language at once, for a program that has them on its disk. */
export const catalogues: Catalogues = { de: DE };

/** They are all here. */
export async function loadLanguage(_language: Language): Promise<void> {}
