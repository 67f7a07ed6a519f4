import { utcOfWall } from "@lapline/contract";
import { planBuild } from "@lapline/engine";
import { tell } from "@lapline/present";
import type { Command } from "../Command";
import { readBoardAsWritten } from "../readBoard";
import { writeWhole } from "../writeWhole";
import { exitCodeOf } from "./exitCodeOf";
import { readOutputPath } from "./outputPath";
import { READER_OPTIONS, readReader } from "./readerOptions";
import { tellBlockers } from "./tellBlockers";

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
    if (text === null) {
      if (plan.calendar !== null) {
        const t = tell(reader);
        terminal.tell(t`There are no dates to write: name the start, shop.start, in the board file.`);
        return 1;
      }
      tellBlockers("There is no calendar", { plan, reader }, terminal);
      return 1;
    }
    await writeWhole(path, new TextEncoder().encode(text));
    terminal.print(path);
    return exitCodeOf(plan);
  },
};
