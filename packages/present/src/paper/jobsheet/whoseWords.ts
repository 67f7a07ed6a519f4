import { shortenToWidth } from "../sheet/flow/shortenToWidth";

interface Whose {
  readonly name: string;
  readonly serial: string | undefined;
}

/**
 * Whose board a page or a label is of, in one line: a long name is shortened, the serial never, since it is what tells two boards
 * apart.
 * @param measure the width of a text as it will be set, in the unit of the room
 */
export function whoseWords({ name, serial }: Whose, room: number, measure: (part: string) => number): string {
  if (serial === undefined || serial === "") return shortenToWidth(name, room, measure);
  const behind = ` · ${serial}`;
  return `${shortenToWidth(name, room - measure(behind), measure)}${behind}`;
}
