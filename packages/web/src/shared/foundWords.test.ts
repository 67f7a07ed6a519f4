import { expect, test } from "vitest";
import { foundWords } from "./foundWords";

const GERMAN = { units: "mm", language: "de" } as const;

test("what was read at a place is told, and a text of the file stays as it stands there", () => {
  expect(foundWords('"nothing"', GERMAN)).toBe('"nothing"');
  expect(foundWords("nothing", GERMAN)).toBe("nichts");
  expect(foundWords("a list of 3", GERMAN)).toBe("eine Liste von 3");
  expect(foundWords("2.4 MB of text", GERMAN)).toBe("2,4 MB Text");
  expect(foundWords("the end of the file at line 2, column 7", GERMAN)).toBe(
    "das Ende der Datei in Zeile 2, Spalte 7",
  );
  expect(foundWords("the end of the file at line 2, column 7", { ...GERMAN, language: "en" })).toBe(
    "the end of the file at line 2, column 7",
  );
});
