import { describe, expect, test } from "vitest";
import { PARTS } from "../board/parts";
import { WORDS_OF } from "../board/wordsOf";
import { GLOSSARY } from "./glossary";
import { readGlossary } from "./readGlossary";

describe("readGlossary", () => {
  test("takes each table's rows under its heading, and nothing else", () => {
    const text =
      "# Glossary\n\n## The board\n| word | means |\n|---|---|\n| rail | the side |\n\n## Fins\nWords.\n";
    expect(readGlossary(text)).toEqual([
      { title: "The board", entries: [{ word: "rail", means: "the side" }] },
      { title: "Fins", entries: [] },
    ]);
  });

  test("finds every part of the page's words in GLOSSARY.md", () => {
    for (const { id } of PARTS) {
      const part = GLOSSARY.find(({ title }) => title === WORDS_OF[id]);
      expect(part?.entries.length, id).toBeGreaterThan(5);
    }
  });
});
