import type { Reader } from "../language/Reader";
import { tell } from "../language/tell";
import { tellText } from "../language/tellText";

const REPAIR = /^Repair (\d+): (.*)$/;

/** What a step is called; a repair by its number. */
export function stepTitle(title: string, reader: Reader): string {
  const t = tell(reader);
  const [, number, what] = REPAIR.exec(title) ?? [];
  return number === undefined || what === undefined ? tellText(title, reader) : t`Repair ${number}: ${what}`;
}
