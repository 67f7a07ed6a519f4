import { emptyPad, type PadValue, TICKS_PER_INCH } from "./PadValue";

const WRITTEN =
  /^\s*(?:(\d+)\s*(?:ft|')\s*)?(?:(\d+(?:\.\d+)?)(?=\D|$))?\s*(?:(\d+)\/(\d+))?\s*(in|"|mm|cm|kg|g|lb|deg|°)?\s*$/;

const UNIT_OF: Readonly<Record<string, string>> = { '"': "in", "°": "deg" };

/** What stands in a field as if it had been pressed; empty where the pad could not have pressed it. */
export function readPad(text: string, unit: string): PadValue {
  const [whole, feet = "", digits = "", over, under, written] = WRITTEN.exec(text) ?? [];
  if (whole === undefined) return emptyPad(unit);
  const ticks = over === undefined ? 0 : (Number(over) / Number(under)) * TICKS_PER_INCH;
  if (!Number.isInteger(ticks) || ticks >= TICKS_PER_INCH) return emptyPad(unit);
  const isInches = feet !== "" || ticks > 0;
  return {
    feet,
    digits,
    ticks,
    unit: written === undefined ? (isInches ? "in" : unit) : (UNIT_OF[written] ?? written),
  };
}
