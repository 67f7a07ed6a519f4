const LONGEST = 40;
/** Control characters, those that only steer how others are written, and halves of a pair: none of them is seen as it is. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\p{Zl}\p{Zp}]/u;

/** A device's name as it is kept, one line of at most 40 characters; null where it is none. What it says is text, whatever it looks like. */
export function readDeviceName(asked: unknown): string | null {
  if (typeof asked !== "string" || asked.length > 4 * LONGEST) return null;
  const name = asked.normalize("NFC").trim().replace(/ +/g, " ");
  const length = [...name].length;
  return length > 0 && length <= LONGEST && !UNSEEN.test(name) ? name : null;
}
