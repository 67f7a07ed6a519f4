import { emptyPad, type PadKey, type PadValue, TICKS_PER_INCH } from "./PadValue";

/** More digits than any reading has. */
const MOST_DIGITS = 6;
const INCHES_PER_FOOT = 12;

/** What the pad holds after one more key; a key that would make what no tape shows does nothing. */
export function pressKey(value: PadValue, key: PadKey): PadValue {
  const next = pressed(value, key);
  const isOver = next.feet !== "" && Number(next.digits) >= INCHES_PER_FOOT;
  return isOver ? value : next;
}

function pressed(value: PadValue, key: PadKey): PadValue {
  switch (key.kind) {
    case "digit":
      return pressDigit(value, key.digit);
    case "point":
      if (value.ticks > 0 || value.digits.includes(".")) return value;
      return { ...value, digits: `${value.digits === "" ? "0" : value.digits}.` };
    case "fraction":
      return pressFraction(value, key.ticks);
    case "unit":
      return pressUnit(value, key.unit);
    case "back":
      return pressBack(value);
  }
}

/** A digit behind a fraction can only begin another number. */
function pressDigit(value: PadValue, digit: string): PadValue {
  if (value.ticks > 0) return { ...emptyPad(value.unit), digits: digit };
  if (value.digits.length >= MOST_DIGITS) return value;
  return { ...value, digits: value.digits === "0" ? digit : value.digits + digit };
}

/** Fractions add up, and a whole inch is carried: 1/4 and 1/8 are 3/8, 11 1/2 and 1/2 are 12. Behind decimals there are none. */
function pressFraction(value: PadValue, ticks: number): PadValue {
  if (value.digits.includes(".")) return value;
  const sum = value.ticks + ticks;
  const whole = Number(value.digits) + Math.floor(sum / TICKS_PER_INCH);
  return { ...value, unit: "in", ticks: sum % TICKS_PER_INCH, digits: whole === 0 ? "" : String(whole) };
}

function pressUnit(value: PadValue, unit: string): PadValue {
  if (unit === "ft") {
    const canBeFeet = value.feet === "" && value.ticks === 0 && /^\d+$/.test(value.digits);
    return canBeFeet ? { feet: value.digits, digits: "", ticks: 0, unit: "in" } : value;
  }
  return unit === "in" ? { ...value, unit } : { ...value, unit, feet: "", ticks: 0 };
}

function pressBack(value: PadValue): PadValue {
  if (value.ticks > 0) return { ...value, ticks: 0 };
  if (value.digits !== "") return { ...value, digits: value.digits.slice(0, -1) };
  return { ...value, feet: "", digits: value.feet };
}
