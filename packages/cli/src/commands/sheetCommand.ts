import { planBuild, say } from "@lapline/engine";
import type { Command, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoard } from "../readBoard";
import { writeWhole } from "../writeWhole";
import { chooseWord } from "./chooseWord";
import { exitCodeOf } from "./exitCodeOf";
import { madeOnOf } from "./madeOnOf";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { tellState } from "./tellState";

const PAPERS = ["a4", "letter"] as const;
/** A longer one makes modules too small for a telephone at arm's length. */
const URL_LETTERS_AT_MOST = 200;

export const sheetCommand: Command = {
  name: "sheet",
  needs: ["FILE"],
  says: "the Sheet: two to four pages for the wall, or labels for cups and cans",
  options: {
    output: { short: "o", value: "OUT.pdf", needed: true, says: "the file to write" },
    paper: { value: PAPERS.join("|"), says: "a4 if left out" },
    labels: { says: "labels for every cup and can instead, to cut out" },
    url: { value: "URL", says: "the board's page; stands on the Sheet as a QR code" },
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const asked = readAsked(words);
    const [file = ""] = words.given;
    const { path } = readOutputPath(words.options.output, { endings: [".pdf"], keeps: [file] });
    const board = await readBoard(file, terminal);
    const plan = planBuild(board);
    // Only here, so that the other commands start without what makes paper.
    const { jobSheetPdf, labelsPdf } = await import("@lapline/present/paper");
    const { labels, ...rest } = asked;
    const request = {
      ...rest,
      plan,
      madeOn: madeOnOf(terminal.now()),
      ...(board.order === undefined ? {} : { order: board.order }),
    };
    const bytes = await (labels ? labelsPdf(request) : jobSheetPdf(request));
    if (bytes === null) {
      if (exitCodeOf(plan) === 0)
        throw new RefusedError(
          say`There are no labels: no cup is planned for this board. Nothing was written.`,
        );
      refuseBlocked("There are no labels", { plan, reader: asked.reader });
    }
    await writeWhole(path, bytes);
    terminal.print(path);
    return tellState(plan, { reader: asked.reader, terminal });
  },
};

function readAsked(words: CommandWords) {
  const { options } = words;
  const url = readUrl(options.url);
  return {
    labels: options.labels === true,
    paper: chooseWord("--paper", options.paper, { words: PAPERS, usual: "a4" }),
    reader: readReader(words),
    ...(url === undefined ? {} : { url }),
  };
}

function readUrl(given: string | true | undefined): string | undefined {
  if (given === undefined) return undefined;
  const url = String(given);
  const isWeb = URL.canParse(url) && /^https?:$/.test(new URL(url).protocol);
  if (!isWeb)
    throw new RefusedError(
      say`--url is a web address that begins with http:// or https://; ${JSON.stringify(url)} was given.`,
    );
  if (url.length > URL_LETTERS_AT_MOST)
    throw new RefusedError(
      say`--url has ${url.length} letters; a code that can be read has ${URL_LETTERS_AT_MOST} at most.`,
    );
  return url;
}
