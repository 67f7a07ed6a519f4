import { utcOfWall } from "@lapline/contract";
import { buildShopCalendar, type Plan, planBuild, SHOP_DEFAULTS, say } from "@lapline/engine";
import { barredSentence, formatShopText, type Reader, tell, tellPhrase } from "@lapline/present";
import type { Command, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoardAsWritten } from "../readBoard";
import type { ExitCode, Terminal } from "../Terminal";
import { writeWhole } from "../writeWhole";
import { exitCodeOf } from "./exitCodeOf";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { tellBarred } from "./tellBarred";

const MOST_STANDS = 20;

export const calendarCommand: Command = {
  name: "calendar",
  needs: ["FILE..."],
  says: "the steps as an iCalendar file, with alarms; of several boards on shared stands, with who stands where when",
  options: {
    output: {
      short: "o",
      value: "OUT.ics",
      needed: true,
      says: "the file to write; imported again, it replaces the steps of the last",
    },
    stands: {
      value: "N",
      says: "pairs of stands that several boards share; those of the first file, shop.stands, or one if left out",
    },
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const reader = readReader(words);
    const { path } = readOutputPath(words.options.output, { endings: [".ics"], keeps: words.given });
    const stands = readStands(words);
    const boards = await readBoards(words.given, terminal);
    const [first] = boards;
    if (first === undefined) return 2;
    const shop =
      boards.length === 1 ? null : planShop(boards, stands ?? first.board.shop?.stands ?? 1, reader);
    const zone = first.file.shop?.timeZone;
    // Only here, so that the other commands start without it.
    const { calendarIcs } = await import("@lapline/present/calendar");
    const text = calendarIcs(
      boards.map(({ plan, board, name }, i) => ({
        board: board.order?.serial ?? name,
        plan: shop === null ? plan : { ...plan, calendar: shop.boards[i]?.calendar ?? null },
      })),
      {
        stamp: terminal.now(),
        reader,
        hours: first.board.shop?.hours ?? SHOP_DEFAULTS.hours,
        utcOf: zone === undefined ? null : (wallText) => utcOfWall(zone, wallText),
      },
    );
    if (text === null) refuseDateless(boards, reader);
    await writeWhole(path, new TextEncoder().encode(text));
    if (shop !== null)
      terminal.print(
        formatShopText({ boards: boards.map(({ name: id, plan }) => ({ id, plan })), shop }, reader),
      );
    terminal.print(path);
    if (shop !== null) tellShop(shop.findings, { reader, terminal });
    return tellStates(boards, { reader, terminal });
  },
};

type ReadBoard = Awaited<ReturnType<typeof readBoards>>[number];

/** Each under its own name; boards of one name are told apart by a number. */
async function readBoards(files: readonly string[], terminal: Terminal) {
  const boards = [];
  const names: string[] = [];
  for (const given of files) {
    const { board, file } = await readBoardAsWritten(given, terminal);
    const alike = names.filter((name) => name === board.name).length;
    names.push(board.name);
    const name = alike === 0 ? board.name : `${board.name} #${alike + 1}`;
    boards.push({ name, board, file, plan: planBuild(board) });
  }
  return boards;
}

function readStands({ options, given }: CommandWords): number | null {
  if (options.stands === undefined) return null;
  if (given.length < 2) throw new RefusedError(say`--stands is for several boards: name more than one file.`);
  const stands = Number(options.stands);
  if (Number.isInteger(stands) && stands >= 1 && stands <= MOST_STANDS) return stands;
  throw new RefusedError(
    say`--stands is a whole number from 1 to ${MOST_STANDS}; ${JSON.stringify(options.stands)} was given.`,
  );
}

/** All boards in the days of the first one's shop. Throws RefusedError where one cannot be planned. */
function planShop(boards: readonly ReadBoard[], stands: number, reader: Reader) {
  const unplanned = boards.find(({ plan }) => plan.calendar === null);
  if (unplanned !== undefined) refuseDateless([unplanned], reader);
  const { value, findings } = buildShopCalendar(
    boards.map(({ name, board, plan }) => ({ id: name, board, plan })),
    stands,
  );
  if (value !== null) return value;
  const reasons = findings.map(({ says }) => tellPhrase(says, reader)).join("; ");
  throw new RefusedError(tell(reader)`There is no calendar of the shop: ${reasons}. Nothing was written.`);
}

function tellShop(
  findings: readonly { readonly severity: string; readonly says: Parameters<typeof tellPhrase>[0] }[],
  { reader, terminal }: { readonly reader: Reader; readonly terminal: Terminal },
): void {
  for (const { severity, says } of findings) if (severity !== "note") terminal.tell(tellPhrase(says, reader));
}

function tellStates(
  boards: readonly ReadBoard[],
  { reader, terminal }: { readonly reader: Reader; readonly terminal: Terminal },
): ExitCode {
  for (const { name, plan } of boards) {
    const barred = barredSentence(plan, reader);
    if (barred !== null) tellBarred(boards.length === 1 ? barred : `${name}: ${barred}`, terminal);
  }
  return boards.some(({ plan }) => exitCodeOf(plan) === 1) ? 1 : 0;
}

/** What the dates are wanting: a start, what blocks the board, or the parts that steps are made of. */
function refuseDateless(boards: readonly { readonly plan: Plan }[], reader: Reader): never {
  const { plan } = boards.find((board) => board.plan.calendar === null) ?? boards[0]!;
  if (plan.calendar !== null)
    throw new RefusedError(
      say`There are no dates to write: name the start, shop.start, in the board file. Nothing was written.`,
    );
  if (exitCodeOf(plan) === 1) refuseBlocked("There is no calendar", { plan, reader });
  if (plan.layup === null)
    throw new RefusedError(
      say`There is no calendar: without cloth and resin no steps are planned. Name them, glass, in the board file. Nothing was written.`,
    );
  throw new RefusedError(
    say`There is no calendar: no steps are planned for this board. Nothing was written.`,
  );
}
