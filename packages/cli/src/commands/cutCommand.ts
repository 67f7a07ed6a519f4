import { fraction, length, type Plan, planBuild, say } from "@lapline/engine";
import { buildNestOrders, checkNestOrder, type NestFault, type NestLay, type NestOrder } from "@lapline/nest";
import { barredSentence, formatLayText, type Reader, tell, tellPhrase } from "@lapline/present";
import type { Command, CommandWords } from "../Command";
import { nestInThread } from "../cut/nestInThread";
import { ROLL_OPTION, readRolls } from "../cut/readRolls";
import { RefusedError } from "../RefusedError";
import { readBoard } from "../readBoard";
import type { Terminal } from "../Terminal";
import { writeWhole } from "../writeWhole";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { tellBarred } from "./tellBarred";

const ENDINGS = [".svg", ".pdf"] as const;
/** One seed for all, so that the same files give the same lay. */
const SEED = 1;
const LAYINGS = 3000;

export const cutCommand: Command = {
  name: "cut",
  needs: ["FILE..."],
  says: "the shortest roll that all cloth of one or several boards comes out of",
  options: {
    output: {
      short: "o",
      value: "OUT.svg|.pdf",
      says: "a picture of how the pieces lie; text in the terminal if left out",
    },
    roll: ROLL_OPTION,
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const reader = readReader(words);
    const t = tell(reader);
    const output = readOutput(words);
    const widthsM = readRolls(words.options.roll);
    const boards = await readBoards(words.given, terminal);
    for (const { name, plan } of boards) {
      if (plan.cutplan === null) refuseUncut(name, plan, reader);
    }
    const orders = buildNestOrders(boards, widthsM);
    refuseUnknownRolls(widthsM, orders);
    if (orders.length === 0)
      throw new RefusedError(t`No layer and no patch is planned: there is no cloth to cut.`);
    for (const order of orders) refuseFaults(order, reader);
    const lays: NestLay[] = [];
    for (const order of orders) lays.push(await layOut(order, { terminal, reader }));
    const barred = boards.flatMap(({ name, plan }) => {
      const sentence = barredSentence(plan, reader);
      return sentence === null ? [] : [`${name}: ${sentence}`];
    });
    for (const sentence of barred) tellBarred(sentence, terminal);
    if (output === null) {
      const rolled = boards.filter(({ plan }) => plan.layup?.cutting === "rolled").map(({ name }) => name);
      terminal.print(formatLayText(lays, { reader, rolled }));
      return 0;
    }
    // Only here, so that the other commands start without what makes paper.
    const { layPdf, laySvg } = await import("@lapline/present/paper");
    const paper = { boards: boards.map(({ name }) => name), lays, barred, reader };
    const content = output.ending === ".svg" ? laySvg(paper) : await layPdf(paper, terminal.now());
    await writeWhole(output.path, content);
    terminal.print(output.path);
    return 0;
  },
};

function readOutput({ options, given }: CommandWords) {
  return options.output === undefined
    ? null
    : readOutputPath(options.output, { endings: ENDINGS, keeps: given });
}

/** Each under its own name; boards of one name are told apart by a number. */
async function readBoards(files: readonly string[], terminal: Terminal) {
  const boards: Array<{ name: string; plan: Plan }> = [];
  for (const file of files) {
    const board = await readBoard(file, terminal);
    const alike = boards.filter(
      ({ name }) => name === board.name || name.startsWith(`${board.name} #`),
    ).length;
    boards.push({
      name: alike === 0 ? board.name : `${board.name} #${alike + 1}`,
      plan: planBuild(board),
    });
  }
  return boards;
}

function refuseUncut(name: string, plan: Plan, reader: Reader): never {
  const t = tell(reader);
  const reasons = plan.findings.filter(
    ({ severity, code }) => severity === "blocker" || code.startsWith("cutplan."),
  );
  throw new RefusedError(
    [
      t`There is no cloth to cut for ${name} while these stand in the way; nothing was written.`,
      ...reasons.map(({ path, says }) => `  ${path}: ${tellPhrase(says, reader)}`),
    ].join("\n"),
  );
}

function refuseUnknownRolls(widthsM: Readonly<Record<string, number>>, orders: readonly NestOrder[]): void {
  const cloths = [...new Set(orders.map(({ cloth }) => cloth))];
  const unknown = Object.keys(widthsM).find((cloth) => !cloths.includes(cloth));
  if (unknown === undefined) return;
  throw new RefusedError(
    say`--roll names ${JSON.stringify(unknown)}, which no board is made with; they take ${cloths.join(", ")}.`,
  );
}

function refuseFaults(order: NestOrder, reader: Reader): void {
  const faults = checkNestOrder(order);
  if (faults.length > 0)
    throw new RefusedError(faults.map((fault) => faultWords(fault, order, reader)).join("\n"));
}

function faultWords(fault: NestFault, { cloth, widthM }: NestOrder, reader: Reader): string {
  const t = tell(reader);
  switch (fault.kind) {
    case "too-wide":
      return t`${fault.piece} does not fit the roll of ${cloth}, which is ${length(widthM)} wide: it needs a roll at least ${length(fault.neededM)} wide.`;
    case "no-roll":
      return t`A roll of ${cloth} is wider than nought.`;
    case "no-pieces":
      return t`No piece is cut from ${cloth}.`;
    case "no-shape":
      return t`${fault.piece} has no area to cut.`;
  }
}

/** Looks for the lay, with progress where somebody watches. */
async function layOut(
  order: NestOrder,
  { terminal, reader }: { readonly terminal: Terminal; readonly reader: Reader },
): Promise<NestLay> {
  const t = tell(reader);
  const lay = await nestInThread({ order, search: { seed: SEED, layings: LAYINGS } }, ({ made, of, best }) =>
    terminal.showProgress?.(
      t`${order.cloth}: ${fraction(made / of)} looked through, shortest so far ${length(best.lengthM)}`,
    ),
  );
  terminal.showProgress?.("");
  return lay;
}
