import type { CommandOption } from "./Command";

/** An option as it is typed: `--port N`, `-o OUT.pdf`. */
export function optionText(name: string, { short, value }: CommandOption): string {
  const flag = short === undefined ? `--${name}` : `-${short}`;
  return value === undefined ? flag : `${flag} ${value}`;
}
