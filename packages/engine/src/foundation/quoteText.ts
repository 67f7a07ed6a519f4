const LONGEST_QUOTE = 40;

/**
 * What was read, in quotes, short and harmless enough to stand in a message: long text is cut, and characters that steer a
 * terminal or turn the writing direction are shown as `?`.
 */
export function quoteText(text: string): string {
  const shown = text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE - 1)}…` : text;
  return `"${Array.from(shown, harmless).join("")}"`;
}

function harmless(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  const steersTerminal = code < 0x20 || (code >= 0x7f && code <= 0x9f);
  const turnsDirection =
    code === 0x200e ||
    code === 0x200f ||
    (code >= 0x2028 && code <= 0x202e) ||
    (code >= 0x2066 && code <= 0x2069);
  const halfPair = code >= 0xd800 && code <= 0xdfff;
  return steersTerminal || turnsDirection || halfPair ? "?" : character;
}
