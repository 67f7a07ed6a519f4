/** The Bench, and the pad of big keys. */
export const BENCH: Readonly<Record<string, string>> = {
  "take back one key": "eine Taste zurück",
  "decimal point": "Dezimalpunkt",
  "Reading pad, {1}": "Tastenfeld, {1}",
  "next station": "nächste Station",
  next: "weiter",
  table: "Tabelle",
  close: "zu",
  "same as {1}": "wie {1}",
  "big keys": "große Tasten",
};
