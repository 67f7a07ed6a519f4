import { planBuild } from "@lapline/engine";
import { formatCheckText } from "@lapline/present";
import type { Command } from "../Command";
import { readBoard } from "../readBoard";
import { exitCodeOf } from "./exitCodeOf";
import { READER_OPTIONS, readReader } from "./readerOptions";

export const checkCommand: Command = {
  name: "check",
  needs: ["FILE"],
  says: "what is wrong or doubtful in the readings and choices, a line for each",
  options: { ...READER_OPTIONS },
  async run(words, terminal) {
    const reader = readReader(words);
    const [file = ""] = words.given;
    const plan = planBuild(await readBoard(file, terminal));
    terminal.print(formatCheckText(plan, reader));
    return exitCodeOf(plan);
  },
};
