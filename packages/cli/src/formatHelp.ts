import type { Command } from "./Command";
import { optionText } from "./optionText";

/** The page that `lapline --help` prints. */
export function formatHelp(commands: readonly Command[]): string {
  return [
    "Lapline turns tape readings off a shaped blank into a whole build plan.",
    "",
    ...formatColumns(commands.map((command) => [usageOf(command), command.says])),
    "",
    "FILE is a board file; - is standard input. lapline COMMAND --help says more.",
    "Exit code 0: done. 1: done, with a blocker among the findings. 2: not understood, nothing written.",
  ].join("\n");
}

/** The page that `lapline COMMAND --help` prints. */
export function formatCommandHelp(command: Command): string {
  const options = Object.entries(command.options).map(([name, option]) => [
    optionText(name, option),
    option.says,
  ]);
  return [
    `Usage: ${usageOf(command)}`,
    "",
    command.says,
    ...(options.length > 0 ? [""] : []),
    ...formatColumns(options),
  ].join("\n");
}

function usageOf(command: Command): string {
  const options = Object.entries(command.options).map(([name, option]) =>
    option.needed ? optionText(name, option) : `[${optionText(name, option)}]`,
  );
  return ["lapline", command.name, ...command.needs, ...options].join(" ");
}

function formatColumns(rows: ReadonlyArray<readonly string[]>): string[] {
  const widest = Math.max(0, ...rows.map(([left = ""]) => left.length));
  return rows.map(([left = "", right = ""]) => `  ${left.padEnd(widest)}  ${right}`);
}
