import { fieldWords, type Reader, tell, tellText } from "@lapline/present";

/** A value of a board file in words: `12 in`; `from tail 12 in, left 7 in`; what is not there says so. */
export function valueWords(value: unknown, reader: Reader): string {
  const t = tell(reader);
  if (value === undefined || value === null || value === "") return t`nothing`;
  if (typeof value === "boolean") return value ? t`yes` : t`no`;
  if (Array.isArray(value)) {
    const words = value.map((each) => valueWords(each, reader));
    return words.length === 0 ? t`nothing` : words.join("; ");
  }
  if (typeof value === "object")
    return Object.entries(value)
      .map(([name, part]) => `${fieldWords(name, reader)} ${valueWords(part, reader)}`)
      .join(", ");
  return tellText(String(value), reader);
}
