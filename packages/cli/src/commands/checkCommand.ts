import { planBuild } from "@lapline/engine";
import { formatCheckText } from "@lapline/present";
import type { Command } from "../Command";
import { readBoard } from "../readBoard";
import { exitCodeOf } from "./exitCodeOf";
import { readUnits, UNITS_OPTION } from "./unitsOption";

export const checkCommand: Command = {
  name: "check",
  needs: ["FILE"],
  says: "what is wrong or doubtful in the readings and choices, a line for each",
  options: { units: UNITS_OPTION },
  async run(words, terminal) {
    const units = readUnits(words);
    const [file = ""] = words.given;
    const plan = planBuild(await readBoard(file, terminal));
    terminal.print(formatCheckText(plan, { units }));
    return exitCodeOf(plan);
  },
};
