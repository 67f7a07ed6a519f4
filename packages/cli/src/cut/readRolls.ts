import { parseQuantity, say } from "@lapline/engine";
import type { CommandOption } from "../Command";
import { RefusedError } from "../RefusedError";

export const ROLL_OPTION: CommandOption = {
  value: "CLOTH=WIDTH",
  says: 'another width of roll than the board files give, "e-136=38 in"; several with commas between them',
};

/** Widths by the cloth's id, in metres. Throws RefusedError. */
export function readRolls(given: string | true | undefined): Readonly<Record<string, number>> {
  if (given === undefined) return {};
  const rolls = String(given)
    .split(",")
    .map((part) => {
      const [cloth = "", width = "", ...more] = part.split("=").map((word) => word.trim());
      if (cloth === "" || width === "" || more.length > 0)
        return refuse(given, 'write the cloth and its width, such as "e-136=38 in"');
      const read = parseQuantity(width, "length");
      if (!read.ok) return refuse(given, read.message);
      if (!(read.value > 0)) return refuse(given, "a roll is wider than nought");
      return [cloth, read.value] as const;
    });
  return Object.fromEntries(rolls);
}

function refuse(given: string | true, reason: string): never {
  throw new RefusedError(say`--roll ${JSON.stringify(given)}: ${reason}.`);
}
