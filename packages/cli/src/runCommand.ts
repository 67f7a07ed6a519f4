import { say } from "@lapline/engine";
import { type Language, tellPhrase } from "@lapline/present";
import packageFile from "../package.json" with { type: "json" };
import type { Command } from "./Command";
import { backupCommand } from "./commands/backupCommand";
import { calendarCommand } from "./commands/calendarCommand";
import { checkCommand } from "./commands/checkCommand";
import { csvCommand } from "./commands/csvCommand";
import { cutCommand } from "./commands/cutCommand";
import { demoCommand } from "./commands/demoCommand";
import { meshCommand } from "./commands/meshCommand";
import { pairCommand } from "./commands/pairCommand";
import { planCommand } from "./commands/planCommand";
import { restoreCommand } from "./commands/restoreCommand";
import { serveCommand } from "./commands/serveCommand";
import { sheetCommand } from "./commands/sheetCommand";
import { templateCommand } from "./commands/templateCommand";
import { whyCommand } from "./commands/whyCommand";
import { formatCommandHelp, formatHelp } from "./formatHelp";
import { parseWords } from "./parseWords";
import { RefusedError } from "./RefusedError";
import { suggestNearest } from "./suggestNearest";
import type { ExitCode, Terminal } from "./Terminal";

const COMMANDS: readonly Command[] = [
  planCommand,
  checkCommand,
  whyCommand,
  templateCommand,
  sheetCommand,
  cutCommand,
  calendarCommand,
  meshCommand,
  csvCommand,
  demoCommand,
  serveCommand,
  pairCommand,
  backupCommand,
  restoreCommand,
];
const HELP = new Set(["--help", "-h", "help"]);

/** Does what the words after `lapline` ask for. */
export async function runCommand(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  try {
    return await dispatch(args, terminal);
  } catch (error) {
    if (!(error instanceof RefusedError)) throw error;
    terminal.tell(tellPhrase(error.says, { units: "mm", language: languageOf(args) }));
    return 2;
  }
}

/** The language asked for, wherever it stands among the words; English where it cannot be told. */
function languageOf(args: readonly string[]): Language {
  const at = args.findIndex((word) => word === "--language" || word.startsWith("--language="));
  const word = args[at]?.split("=")[1] ?? args[at + 1];
  return at >= 0 && word === "de" ? "de" : "en";
}

async function dispatch([name, ...rest]: readonly string[], terminal: Terminal): Promise<ExitCode> {
  if (name === undefined) throw new RefusedError(say`${formatHelp(COMMANDS)}`);
  if (name === "--version") {
    terminal.print(packageFile.version);
    return 0;
  }
  if (HELP.has(name)) {
    terminal.print(formatHelp(COMMANDS));
    return 0;
  }
  const command = COMMANDS.find((each) => each.name === name);
  if (command === undefined) {
    const known = [...COMMANDS.map((each) => each.name), "--help", "--version"];
    throw new RefusedError(
      say`lapline has no command ${JSON.stringify(name)}.${suggestNearest(name, known)} See lapline --help.`,
    );
  }
  if (rest.some((word) => word === "--help" || word === "-h")) {
    terminal.print(formatCommandHelp(command));
    return 0;
  }
  return command.run(parseWords(command, rest), terminal);
}
