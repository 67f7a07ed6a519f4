const SYMBOLS: ReadonlyArray<readonly [RegExp, string]> = [
  [/ ?°(?=[CF])/g, " "],
  [/°/g, " deg"],
  [/[µμ]m/g, "um"],
  [/²/g, "2"],
  [/³/g, "3"],
  [/×/g, "x"],
  [/±/g, "+/-"],
  [/≤/g, "<="],
  [/≥/g, ">="],
  [/[–—−]/g, "-"],
  [/[“”″]/g, '"'],
  [/[‘’′]/g, "'"],
  [/→/g, "->"],
  [/…/g, "..."],
  [/·/g, "*"],
  [/\u00a0/g, " "],
];

/** The signs of our own texts in plain letters, for terminals and printers without them; names keep their letters. */
export function asciiText(text: string): string {
  return SYMBOLS.reduce((plain, [sign, letters]) => plain.replace(sign, letters), text);
}
