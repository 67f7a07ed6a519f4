import type { CommandOption, CommandWords } from "../Command";
import { RefusedError } from "../RefusedError";

const UNITS = ["inch", "mm"] as const;

export const UNITS_OPTION: CommandOption = {
  value: "inch|mm",
  says: "lengths in inches or millimetres; inch if left out",
};

/** The units asked for. Throws RefusedError. */
export function readUnits({ options }: CommandWords): (typeof UNITS)[number] {
  const asked = options.units ?? "inch";
  const units = UNITS.find((each) => each === asked);
  if (units !== undefined) return units;
  throw new RefusedError(`--units is inch or mm; ${JSON.stringify(asked)} was given.`);
}
