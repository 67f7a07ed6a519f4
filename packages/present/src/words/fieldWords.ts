import type { Reader } from "../language/Reader";
import { tellText } from "../language/tellText";

/** A field's own name as a person reads it: `aimBesideNose` as `aim beside nose`. */
export function fieldWords(name: string, reader: Reader): string {
  return tellText(
    name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    reader,
  );
}
