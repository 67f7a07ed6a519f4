import type { Command, CommandOption } from "./Command";
import { fillLines } from "./fillLines";
import { optionText } from "./optionText";

/** The page that `lapline --help` prints, in 80 columns: each command with what it cannot do without. */
export function formatHelp(commands: readonly Command[]): string {
  return [
    "Lapline turns tape readings off a shaped blank into a whole build plan.",
    "",
    ...commands.flatMap((command) => [
      ...fillLines(usageOf(command, "needed"), { indent: "  ", hanging: "        " }),
      ...fillLines(command.says.split(" "), { indent: "      ", hanging: "      " }),
    ]),
    "",
    "FILE is a board file; - is standard input. lapline COMMAND --help says more.",
    "Exit code 0: done. 1: done, with a blocker among the findings.",
    "2: nothing was written, because the words or the file were not understood or",
    "the board has not what was asked for.",
  ].join("\n");
}

/** The page that `lapline COMMAND --help` prints, in 80 columns. */
export function formatCommandHelp(command: Command): string {
  const options = Object.entries(command.options);
  return [
    ...fillLines(["Usage:", ...usageOf(command, "all")], { indent: "", hanging: "         " }),
    "",
    ...fillLines(command.says.split(" "), { indent: "", hanging: "" }),
    ...(options.length > 0 ? [""] : []),
    ...options.flatMap(([name, option]) => describeOption(name, option)),
  ].join("\n");
}

/** In pieces that stay whole: an option with its value is one. */
function usageOf(command: Command, which: "needed" | "all"): string[] {
  const options = Object.entries(command.options)
    .filter(([, option]) => which === "all" || option.needed)
    .map(([name, option]) => (option.needed ? optionText(name, option) : `[${optionText(name, option)}]`));
  return [`lapline ${command.name}`, ...command.needs, ...options];
}

const COLUMN = 21;

/** Its words beside it where it is short, below it otherwise. */
function describeOption(name: string, option: CommandOption): string[] {
  const text = `  ${optionText(name, option)}`;
  const hanging = " ".repeat(COLUMN);
  const words = option.says.split(" ");
  if (text.length >= COLUMN) return [text, ...fillLines(words, { indent: hanging, hanging })];
  return fillLines(words, { indent: text.padEnd(COLUMN), hanging });
}
