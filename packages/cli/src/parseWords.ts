import { parseArgs } from "node:util";
import { say } from "@lapline/engine";
import type { Command, CommandWords } from "./Command";
import { optionText } from "./optionText";
import { RefusedError } from "./RefusedError";
import { suggestNearest } from "./suggestNearest";

/** Sorts the words behind a command's name into what was given and options. Throws RefusedError. */
export function parseWords(command: Command, args: readonly string[]): CommandWords {
  const options = Object.fromEntries(
    Object.entries(command.options).map(([name, { value, short }]) => [
      name,
      {
        type: value === undefined ? ("boolean" as const) : ("string" as const),
        ...(short === undefined ? {} : { short }),
      },
    ]),
  );
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const given: string[] = [];
  const read: Record<string, string | true> = {};
  for (const token of tokens) {
    if (token.kind === "positional") given.push(token.value);
    if (token.kind === "option") read[token.name] = readOption(command, token);
  }
  refuseWrongCount(command, given);
  refuseMissingOption(command, read);
  return { given, options: read };
}

interface OptionToken {
  readonly name: string;
  readonly rawName: string;
  readonly value?: string | undefined;
  readonly inlineValue?: boolean | undefined;
}

function readOption(command: Command, token: OptionToken): string | true {
  const option = Object.hasOwn(command.options, token.name) ? command.options[token.name] : undefined;
  if (option === undefined) {
    const known = Object.entries(command.options).map(([name, { short }]) =>
      short === undefined ? `--${name}` : `-${short}`,
    );
    throw new RefusedError(
      say`lapline ${command.name} has no option ${token.rawName}.${suggestNearest(token.rawName, known)}`,
    );
  }
  if (option.value === undefined) {
    if (token.value === undefined) return true;
    throw new RefusedError(
      say`${token.rawName} is a switch and takes no value; ${JSON.stringify(token.value)} was given.`,
    );
  }
  const looksLikeOption = token.inlineValue === false && /^-./.test(token.value ?? "");
  if (token.value === undefined || token.value === "" || looksLikeOption) {
    throw new RefusedError(say`${token.rawName} needs a value: ${token.rawName} ${option.value}.`);
  }
  return token.value;
}

function refuseWrongCount(command: Command, given: readonly string[]): void {
  const usage = `Usage: lapline ${[command.name, ...command.needs].join(" ")}`;
  const missing = command.needs[given.length];
  if (missing !== undefined) throw new RefusedError(say`lapline ${command.name} needs ${missing}. ${usage}`);
  if (command.needs.at(-1)?.endsWith("...")) return;
  const extra = given[command.needs.length];
  if (extra !== undefined)
    throw new RefusedError(say`${JSON.stringify(extra)} is one word too many. ${usage}`);
}

function refuseMissingOption(command: Command, read: Readonly<Record<string, string | true>>): void {
  for (const [name, option] of Object.entries(command.options)) {
    if (option.needed && read[name] === undefined)
      throw new RefusedError(say`lapline ${command.name} needs ${optionText(name, option)}: ${option.says}.`);
  }
}
