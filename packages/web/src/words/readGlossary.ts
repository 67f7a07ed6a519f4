export interface GlossaryPart {
  readonly title: string;
  readonly entries: ReadonlyArray<{ readonly word: string; readonly means: string }>;
}

const HEADING = /^## (.+)$/;
const ROW = /^\| (.+?) \| (.+) \|$/;
const HEAD = "word";

/** The parts of a glossary, each with the rows of its table: a word, or a few of a kind, and what is meant by it. */
export function readGlossary(text: string): readonly GlossaryPart[] {
  const parts: Array<{ title: string; entries: Array<{ word: string; means: string }> }> = [];
  for (const line of text.split(/\r?\n/)) {
    const [, title] = HEADING.exec(line) ?? [];
    if (title !== undefined) parts.push({ title, entries: [] });
    const [, word, means] = ROW.exec(line) ?? [];
    if (word !== undefined && means !== undefined && word !== HEAD)
      parts.at(-1)?.entries.push({ word, means });
  }
  return parts;
}
