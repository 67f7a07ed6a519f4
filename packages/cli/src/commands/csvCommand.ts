import type { CsvRead } from "@lapline/contract/csv";
import { planBuild, say } from "@lapline/engine";
import type { Command, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoardAsWritten } from "../readBoard";
import { readInput } from "../readInput";
import type { ExitCode, Terminal } from "../Terminal";
import { writeWhole } from "../writeWhole";
import { chooseWord } from "./chooseWord";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { tellState } from "./tellState";

const KINDS = ["survey", "marks"] as const;
const CSV_FILE = 'A CSV file is text in UTF-8: save it as "CSV UTF-8".';

export const csvCommand: Command = {
  name: "csv",
  needs: ["FILE"],
  says: "the survey or the fin marks for a spreadsheet, and back into a board file with --from",
  options: {
    of: {
      value: KINDS.join("|"),
      needed: true,
      says: "the readings of the stations, or the fins as planned and as set",
    },
    output: {
      short: "o",
      value: "OUT.csv|.json",
      needed: true,
      says: "the file to write: a CSV file, or with --from a new board file",
    },
    from: {
      value: "IN.csv",
      says: "a CSV file whose readings take the place of those in FILE; the board file that comes of it is written to OUT.json",
    },
    units: {
      value: "inch|mm",
      says: "lengths in inches or millimetres; those the tape was read in if left out",
    },
    language: READER_OPTIONS.language,
  },
  async run(words, terminal) {
    const of = chooseWord("--of", words.options.of, { words: KINDS });
    const { from } = words.options;
    return typeof from === "string"
      ? readTable({ of, from, words }, terminal)
      : writeTable({ of, words }, terminal);
  },
};

interface Asked {
  readonly of: (typeof KINDS)[number];
  readonly words: CommandWords;
}

async function writeTable({ of, words }: Asked, terminal: Terminal): Promise<ExitCode> {
  const reader = readReader(words);
  const units = words.options.units === undefined ? undefined : reader.units;
  const [file = ""] = words.given;
  const { path } = readOutputPath(words.options.output, { endings: [".csv"], keeps: [file] });
  const read = await readBoardAsWritten(file, terminal);
  const plan = planBuild(read.board);
  const { formatMarksCsv, formatSurveyCsv } = await import("@lapline/contract/csv");
  const text = of === "survey" ? formatSurveyCsv(read.file, units) : formatMarksCsv(read.file, plan, units);
  if (text === null) {
    if (read.file.fins === undefined)
      throw new RefusedError(say`There are no marks of this board: it has no fins. Nothing was written.`);
    refuseBlocked("There are no marks", { plan, reader });
  }
  await writeWhole(path, text);
  terminal.print(path);
  return tellState(plan, { reader, terminal });
}

async function readTable(
  { of, from, words }: Asked & { readonly from: string },
  terminal: Terminal,
): Promise<ExitCode> {
  if (words.options.units !== undefined)
    throw new RefusedError(say`--units is for writing a CSV file; one that is read says its units itself.`);
  const [file = ""] = words.given;
  const { path } = readOutputPath(words.options.output, { endings: [".json"], keeps: [file, from] });
  if (file === "-" && from === "-")
    throw new RefusedError(say`FILE and --from cannot both be standard input: name one of them.`);
  const { file: into } = await readBoardAsWritten(file, terminal);
  const text = await readInput(from, terminal, CSV_FILE);
  const csv = await import("@lapline/contract/csv");
  const read: CsvRead = of === "survey" ? csv.parseSurveyCsv(text, into) : csv.parseMarksCsv(text, into);
  if (!read.ok) {
    const name = from === "-" ? "standard input" : from;
    const lines = csv.formatCsvProblems(read.problems);
    throw new RefusedError(say`${name} cannot be read as ${of}; nothing was written:\n${lines}`);
  }
  await writeWhole(path, read.text);
  terminal.print(path);
  return tellState(planBuild(read.board), { reader: readReader(words), terminal });
}
