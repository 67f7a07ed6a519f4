import { type PadValue, TICKS_PER_INCH } from "./PadValue";

/** What was pressed as a board file has it: `5 ft 10 1/2 in`, `285 mm`; nothing where nothing was pressed. */
export function formatPad({ feet, digits, ticks, unit }: PadValue): string {
  const number = [digits.replace(/\.$/, ""), fraction(ticks)].filter((part) => part !== "").join(" ");
  const parts = [...(feet === "" ? [] : [`${feet} ft`]), ...(number === "" ? [] : [`${number} ${unit}`])];
  return parts.join(" ");
}

function fraction(ticks: number): string {
  if (ticks === 0) return "";
  let [over, under] = [ticks, TICKS_PER_INCH];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${over}/${under}`;
}
