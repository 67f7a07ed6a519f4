import { planBuild } from "@lapline/engine";
import { formatPlanText } from "@lapline/present";
import type { Command } from "../Command";
import { readBoard } from "../readBoard";
import { exitCodeOf } from "./exitCodeOf";
import { READER_OPTIONS, readReader } from "./readerOptions";

export const planCommand: Command = {
  name: "plan",
  needs: ["FILE"],
  says: "the build plan, as a page to work from",
  options: { json: { says: "as JSON, in SI units" }, ...READER_OPTIONS },
  async run(words, terminal) {
    const reader = readReader(words);
    const [file = ""] = words.given;
    const plan = planBuild(await readBoard(file, terminal));
    terminal.print(words.options.json ? JSON.stringify(plan, null, 2) : formatPlanText(plan, reader));
    return exitCodeOf(plan);
  },
};
