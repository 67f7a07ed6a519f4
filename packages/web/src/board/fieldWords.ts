import { type Reader, tellText } from "@lapline/present";

/** The name of a field as a person reads it: `aimBesideNose` as `aim beside nose`. */
export function fieldWords(name: string, reader: Reader): string {
  return tellText(
    name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
    reader,
  );
}
