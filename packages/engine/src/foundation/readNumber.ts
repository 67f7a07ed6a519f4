import { type Phrase, say } from "./phrase";
import { quoteText } from "./quoteText";

export interface NumberRead {
  readonly value: number;
  /** Just behind the last character of the number. */
  readonly end: number;
  readonly isWhole: boolean;
}

export interface Fault {
  /** What is wrong there. */
  readonly says: Phrase;
  /** Counted from 0. */
  readonly position: number;
  /** It says by itself what would be right. */
  readonly isAnswer?: true;
}

const VULGAR_FRACTIONS: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅐": [1, 7],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
  "⅑": [1, 9],
  "⅒": [1, 10],
};

/**
 * Reads one number as it stands on a tape or in a notebook, without a sign: `11`, `11.25`, `11,25`, `1/8`, `11 1/4`,
 * `11-1/4`, `11½`. Looks at each character at most twice.
 */
export function readNumber(text: string, start: number): NumberRead | Fault {
  const vulgar = VULGAR_FRACTIONS[text[start] ?? ""];
  if (vulgar !== undefined) return { value: vulgar[0] / vulgar[1], end: start + 1, isWhole: false };
  const wholeEnd = skipDigits(text, start);
  const next = text[wholeEnd] ?? "";
  if (next === "." || next === ",") return readDecimal(text, start, wholeEnd);
  if (wholeEnd === start) {
    const found = start < text.length ? quoteText(text.slice(start)) : "nothing";
    return { says: say`a number was expected and ${found} was read`, position: start };
  }
  if (isFractionBar(next)) return readFraction(text, start, wholeEnd);
  const whole = Number(text.slice(start, wholeEnd));
  return readMixedPart(text, whole, wholeEnd) ?? { value: whole, end: wholeEnd, isWhole: true };
}

export function skipSpaces(text: string, start: number): number {
  let at = start;
  while (at < text.length && /\s/.test(text[at] ?? "")) at++;
  return at;
}

function readDecimal(text: string, start: number, pointAt: number): NumberRead | Fault {
  const end = skipDigits(text, pointAt + 1);
  const digitsBehind = end - pointAt - 1;
  if (digitsBehind === 0) {
    return {
      says: say`a digit is missing behind ${quoteText(text.slice(start, pointAt + 1))}`,
      position: pointAt + 1,
    };
  }
  const whole = text.slice(start, pointAt);
  const behind = text.slice(pointAt + 1, end);
  if (text[pointAt] === "," && digitsBehind === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
    const [asWhole, asDecimal] = [`${whole}${behind}`, `${whole}.${behind}`];
    const says = say`${quoteText(text.slice(start, end))} could be ${asWhole} or ${asDecimal}: write it one of these ways`;
    return { says, position: pointAt };
  }
  return { value: Number(`${whole || "0"}.${behind}`), end, isWhole: false };
}

function readFraction(text: string, start: number, barAt: number): NumberRead | Fault {
  const end = skipDigits(text, barAt + 1);
  if (end === barAt + 1) {
    return {
      says: say`a number is missing under ${quoteText(text.slice(start, barAt + 1))}`,
      position: barAt + 1,
    };
  }
  const bottom = Number(text.slice(barAt + 1, end));
  if (bottom === 0)
    return { says: say`${quoteText(text.slice(start, end))} has nought below the bar`, position: barAt + 1 };
  return { value: Number(text.slice(start, barAt)) / bottom, end, isWhole: false };
}

/** The fraction behind a whole number, or null where there is none. */
function readMixedPart(text: string, whole: number, wholeEnd: number): NumberRead | Fault | null {
  const start = text[wholeEnd] === "-" ? wholeEnd + 1 : skipSpaces(text, wholeEnd);
  const isVulgar = VULGAR_FRACTIONS[text[start] ?? ""] !== undefined;
  const topEnd = skipDigits(text, start);
  if (!isVulgar && (topEnd === start || !isFractionBar(text[topEnd] ?? ""))) return null;
  const part = isVulgar ? readNumber(text, start) : readFraction(text, start, topEnd);
  if ("says" in part) return part;
  if (part.value >= 1) {
    const says = say`${quoteText(text.slice(start, part.end))} is not less than one, so it cannot follow ${whole}`;
    return { says, position: start };
  }
  return { value: whole + part.value, end: part.end, isWhole: false };
}

function skipDigits(text: string, start: number): number {
  let at = start;
  while (at < text.length && isDigit(text[at] ?? "")) at++;
  return at;
}

const isDigit = (character: string): boolean => character >= "0" && character <= "9";
/** The keyboard's slash, the fraction slash and the division slash. */
const isFractionBar = (character: string): boolean =>
  character === "/" || character === "⁄" || character === "∕";
