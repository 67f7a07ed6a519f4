import type { ExitCode, Terminal } from "./Terminal";

export interface CommandOption {
  /** What stands behind the option in the help, `N` in `--port N`; a switch has none. */
  readonly value?: string;
  /** One letter that stands for it: `o` for `-o`. */
  readonly short?: string;
  /** The command cannot do without it. */
  readonly needed?: true;
  readonly says: string;
}

export interface CommandWords {
  readonly given: readonly string[];
  readonly options: Readonly<Record<string, string | true>>;
}

/** One of the words after `lapline`. */
export interface Command {
  readonly name: string;
  /** The words it needs, in order; of the last there may be more where it ends in three dots: `FILE...`. */
  readonly needs: readonly string[];
  readonly says: string;
  readonly options: Readonly<Record<string, CommandOption>>;
  run(words: CommandWords, terminal: Terminal): Promise<ExitCode>;
}
