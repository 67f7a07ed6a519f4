import { formatDecimal } from "./formatDecimal";
import type { Units } from "./quantity";
import { INCHES_PER_FOOT, M_PER_INCH } from "./units";

export interface LengthStyle {
  readonly units: Units;
  /** The finest tick of the tape: 8, 16 or 32 to the inch. In millimetres 8 reads as whole ones and 32 as tenths. */
  readonly denominator: 8 | 16 | 32;
}

/** From here on a length in inches is read in feet and inches, in inches. */
const FEET_FROM_INCHES = 24;
/** Below this a millimetre reading on a 1/16 in tape shows its tenths, in metres. */
const TENTHS_BELOW_M = 0.02;

/**
 * A length as a builder reads it off a tape: `11 1/4 in`, `5'10 1/2"`, `285 mm`, `12.5 mm`.
 *
 * Inches go to the nearest tick and, from 24 in on, into feet. Millimetres are whole with denominator 8, have one decimal
 * with 32, and with 16 have one decimal below 20 mm. The text parses back to within half of its last digit or tick.
 * @param valueM length in metres, any sign
 * @throws RangeError where the length is not a finite number
 */
export function formatLength(valueM: number, style: LengthStyle): string {
  if (!Number.isFinite(valueM)) throw new RangeError("a length to be shown must be a finite number");
  return style.units === "inch" ? inches(valueM, style.denominator) : millimetres(valueM, style.denominator);
}

function inches(valueM: number, denominator: number): string {
  const ticks = Math.round((Math.abs(valueM) / M_PER_INCH) * denominator);
  const sign = valueM < 0 && ticks > 0 ? "-" : "";
  const wholeInches = Math.floor(ticks / denominator);
  const part = fractionText(ticks % denominator, denominator);
  if (wholeInches < FEET_FROM_INCHES) return `${sign}${joinInches(wholeInches, part)} in`;
  const feet = Math.floor(wholeInches / INCHES_PER_FOOT);
  // The nought stays before a fraction: 5'5/16" would be read as five and a bit.
  const inchesText = `${wholeInches % INCHES_PER_FOOT}${part === "" ? "" : ` ${part}`}`;
  return `${sign}${feet}'${inchesText}"`;
}

function joinInches(whole: number, part: string): string {
  if (part === "") return String(whole);
  return whole === 0 ? part : `${whole} ${part}`;
}

function fractionText(ticks: number, denominator: number): string {
  if (ticks === 0) return "";
  let [top, bottom] = [ticks, denominator];
  while (top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  return `${top}/${bottom}`;
}

function millimetres(valueM: number, denominator: number): string {
  const tenths = denominator === 32 || (denominator === 16 && Math.abs(valueM) < TENTHS_BELOW_M);
  return `${formatDecimal(valueM * 1000, tenths && valueM !== 0 ? 1 : 0)} mm`;
}
