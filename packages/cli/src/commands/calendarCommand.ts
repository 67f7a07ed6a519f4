import { utcOfWall } from "@lapline/contract";
import { type Plan, planBuild, say } from "@lapline/engine";
import type { Reader } from "@lapline/present";
import type { Command } from "../Command";
import { RefusedError } from "../RefusedError";
import { readBoardAsWritten } from "../readBoard";
import { writeWhole } from "../writeWhole";
import { exitCodeOf } from "./exitCodeOf";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { refuseBlocked } from "./refuseBlocked";
import { tellState } from "./tellState";

/** As the engine takes them where the file names none. */
const USUAL_HOURS = { from: "09:00", to: "18:00" };

export const calendarCommand: Command = {
  name: "calendar",
  needs: ["FILE"],
  says: "the steps as an iCalendar file, with alarms",
  options: {
    output: {
      short: "o",
      value: "OUT.ics",
      needed: true,
      says: "the file to write; imported again, it replaces the steps of the last",
    },
    ...READER_OPTIONS,
  },
  async run(words, terminal) {
    const reader = readReader(words);
    const [name = ""] = words.given;
    const { path } = readOutputPath(words.options.output, { endings: [".ics"], keeps: [name] });
    const { board, file } = await readBoardAsWritten(name, terminal);
    const plan = planBuild(board);
    const zone = file.shop?.timeZone;
    // Only here, so that the other commands start without it.
    const { calendarIcs } = await import("@lapline/present/calendar");
    const text = calendarIcs(plan, {
      board: board.order?.serial ?? board.name,
      stamp: terminal.now(),
      reader,
      hours: board.shop?.hours ?? USUAL_HOURS,
      utcOf: zone === undefined ? null : (wallText) => utcOfWall(zone, wallText),
    });
    if (text === null) refuseDateless(plan, reader);
    await writeWhole(path, new TextEncoder().encode(text));
    terminal.print(path);
    return tellState(plan, { reader, terminal });
  },
};

/** What the dates are wanting: a start, what blocks the board, or the parts that steps are made of. */
function refuseDateless(plan: Plan, reader: Reader): never {
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
