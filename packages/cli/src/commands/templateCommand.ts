import { type Plan, planBuild, say } from "@lapline/engine";
import type { Reader } from "@lapline/present";
import type { Command, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoard } from "../readBoard";
import type { Terminal } from "../Terminal";
import { writeWhole } from "../writeWhole";
import { chooseWord } from "./chooseWord";
import { madeOnOf } from "./madeOnOf";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { readRulerReads } from "./rulerReads";
import { tellState } from "./tellState";

const KINDS = ["fins", "outline", "cloth"] as const;
const PAPERS = ["a4", "letter", "a3", "roll"] as const;
const ENDINGS = [".pdf", ".svg", ".dxf"] as const;

export const templateCommand: Command = {
  name: "template",
  needs: ["FILE"],
  says: "full-size drawings to print, mark and cut by",
  options: {
    of: { value: KINDS.join("|"), needed: true, says: "what is drawn" },
    output: {
      short: "o",
      value: "OUT.pdf|.svg|.dxf",
      needed: true,
      says: "the file to write; its ending says what kind",
    },
    paper: {
      value: PAPERS.join("|"),
      says: "pages that are joined, or one long sheet; a4 if left out. SVG and DXF are always one sheet",
    },
    part: { value: "NAME", says: "only one of several pieces: left, right, deck-1, patch-1" },
    "ruler-reads": {
      value: "LENGTH",
      says: 'what your printer makes of the 100 mm rulers, "99.2 mm" or across and up "99.2 mm x 99.6 mm"; PDF only',
    },
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const asked = readAsked(words);
    const [file = ""] = words.given;
    const plan = planBuild(await readBoard(file, terminal));
    const content = await draw(plan, asked, terminal);
    await writeWhole(asked.path, content);
    terminal.print(asked.path);
    return tellState(plan, { reader: asked.reader, terminal });
  },
};

type Asked = ReturnType<typeof readAsked>;

function readAsked(words: CommandWords) {
  const { options } = words;
  const { path, ending } = readOutputPath(options.output, { endings: ENDINGS, keeps: words.given });
  const rulerReads = readRulerReads(options["ruler-reads"]);
  if (rulerReads !== undefined && ending !== ".pdf")
    throw new RefusedError(
      say`--ruler-reads makes up for a printer, and ${ending} files are not made for one.`,
    );
  return {
    of: chooseWord("--of", options.of, { words: KINDS }),
    paper: chooseWord("--paper", options.paper, { words: PAPERS, usual: "a4" }),
    part: typeof options.part === "string" ? options.part : null,
    reader: readReader(words),
    path,
    ending,
    rulerReads,
  };
}

/** What goes into the file. */
async function draw(plan: Plan, asked: Asked, terminal: Terminal): Promise<string | Uint8Array> {
  // Only here, so that the other commands start without what makes paper.
  const paper = await import("@lapline/present/paper");
  const whole = paper.buildTemplate(plan, asked);
  if (whole === null) return refuseNone(plan, asked);
  const template = asked.part === null ? whole : paper.pickPart(whole, asked.part);
  if (template === null) {
    const names = whole.parts.map(({ id }) => id).join(", ");
    throw new RefusedError(say`--part is one of ${names}; ${JSON.stringify(asked.part)} was given.`);
  }
  const madeOn = madeOnOf(terminal.now());
  if (asked.ending === ".svg") return paper.templateSvg(template, madeOn);
  if (asked.ending === ".dxf") return paper.templateDxf(template);
  const { rulerReads } = asked;
  const options = { paper: asked.paper, madeOn, ...(rulerReads === undefined ? {} : { rulerReads }) };
  try {
    return await paper.templatePdf(template, options);
  } catch (error) {
    if (error instanceof paper.SheetTooLongError)
      throw new RefusedError(say`--paper ${asked.paper}: ${error.message}.`);
    throw error;
  }
}

const STAGES: Readonly<Record<(typeof KINDS)[number], string>> = {
  fins: "it has no fins",
  outline: "it has no shape",
  cloth: "it has no cloth",
};

function refuseNone(plan: Plan, { of, reader }: { of: Asked["of"]; reader: Reader }): never {
  const blockers = plan.findings.filter(({ severity }) => severity === "blocker");
  if (blockers.length === 0)
    throw new RefusedError(
      say`There is no ${of} template for this board: ${STAGES[of]}. Nothing was written.`,
    );
  refuseBlocked(`There is no ${of} template`, { plan, reader });
}
