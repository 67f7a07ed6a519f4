import type { Catalogues } from "./Catalogues";
import { DE } from "./de";
import { DE_WORKINGS } from "./de/workings";
import type { Language } from "./Language";

/** Every language at once, for a program that has them on its disk. */
export const catalogues: Catalogues = { de: { ...DE, ...DE_WORKINGS } };

/** They are all here. */
export async function loadLanguage(_language: Language): Promise<void> {}

/** They are here too. */
export async function loadWorkings(_language: Language): Promise<void> {}
