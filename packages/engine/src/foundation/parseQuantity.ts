import { formatQuantity } from "./formatQuantity";
import type { Dimension } from "./quantity";
import { quoteText } from "./quoteText";
import { DIMENSION_WORDS, isFoot, READABLE_UNITS, type ReadableUnit, UNIT_AFTER_FEET } from "./readableUnits";
import { type Fault, readNumber, skipSpaces } from "./readNumber";

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly message: string;
      /** The message without the text that was read, for where that stands beside it. */
      readonly reason: string;
      readonly position: number;
    };

/** No quantity needs more; what is longer is refused before it is looked at. */
const LONGEST_TEXT = 80;
const MAY_BE_NEGATIVE: ReadonlySet<Dimension> = new Set(["length", "angle", "temperature"]);

interface Term {
  readonly number: number;
  readonly isWhole: boolean;
  readonly unit: ReadableUnit;
  readonly start: number;
  readonly end: number;
}

/**
 * Reads a quantity as a builder writes it (`11 1/4 in`, `5'10 1/2"`, `28,5 cm`, `4 oz/yd2`, `6°`) into SI.
 *
 * A number without a unit is refused with the readings it could have had; the one exception is a number behind feet
 * (`5'10`), which can only be inches. A comma in front of exactly three digits is refused, because it could be either kind of
 * comma. Lengths, angles and temperatures may have a sign.
 * @param text up to 80 characters; one pass, never throws
 * @returns the value in SI, or a message and the position (from 0) where reading stopped
 */
export function parseQuantity(text: string, dimension: Dimension): ParsedQuantity {
  const { name } = DIMENSION_WORDS[dimension];
  if (text.length > LONGEST_TEXT) {
    const reason = `${text.length} characters are too many; ${name} ${likeOf(dimension)}, needs no more than ${LONGEST_TEXT}`;
    return { ok: false, message: `${quoteText(text)}: ${reason}`, reason, position: LONGEST_TEXT };
  }
  const start = skipSpaces(text, 0);
  if (start === text.length) {
    const reason = `nothing was read; write ${name} ${likeOf(dimension)}`;
    return { ok: false, message: reason, reason, position: 0 };
  }
  const result = readSigned(text, start, dimension);
  if ("value" in result) return { ok: true, value: result.value };
  const hint = result.isAnswer ? "" : `; write ${name} ${likeOf(dimension)}`;
  const where = `character ${result.position + 1}`;
  const message = `${quoteText(text)}, ${where}: ${result.message}${hint}`;
  const reason = result.isAnswer ? result.message : `${where}: ${result.message}${hint}`;
  return { ok: false, message, reason, position: result.position };
}

function likeOf(dimension: Dimension): string {
  const { example } = DIMENSION_WORDS[dimension];
  return dimension === "count" ? `such as ${example}` : `with its unit, such as ${quoteText(example)}`;
}

function readSigned(text: string, start: number, dimension: Dimension): { value: number } | Fault {
  const first = text[start] ?? "";
  const isSigned = first === "-" || first === "−" || first === "+";
  const isNegative = isSigned && first !== "+";
  if (isNegative && !MAY_BE_NEGATIVE.has(dimension)) {
    return { message: `${DIMENSION_WORDS[dimension].name} cannot be negative`, position: start };
  }
  const at = isSigned ? skipSpaces(text, start + 1) : start;
  if (dimension === "count") return readBareCount(text, at);
  const terms = readTerms(text, at, dimension);
  if ("message" in terms) return terms;
  const sign = isNegative ? -1 : 1;
  const [only, ...others] = terms;
  if (only === undefined) return { message: "nothing was read", position: start };
  if (others.length === 0) return finite(only.unit.toSi(sign * only.number), only.start);
  return finite(sign * terms.reduce((sum, term) => sum + term.unit.toSi(term.number), 0), only.start);
}

function finite(value: number, position: number): { value: number } | Fault {
  // "-0 mm" is nought like any other.
  return Number.isFinite(value)
    ? { value: value === 0 ? 0 : value }
    : { message: "the number is too large", position };
}

function readBareCount(text: string, start: number): { value: number } | Fault {
  const read = readNumber(text, start);
  if ("message" in read) return read;
  const end = skipSpaces(text, read.end);
  if (end < text.length)
    return { message: `${quoteText(text.slice(end))} follows the number`, position: end };
  return { value: read.value };
}

function readTerms(text: string, start: number, dimension: Dimension): readonly Term[] | Fault {
  const terms: Term[] = [];
  for (let at = start; at < text.length; ) {
    const term = readTerm(text, at, dimension, terms.at(-1));
    if ("message" in term) return term;
    const fault = checkOrder(text, terms.at(-1), term);
    if (fault !== null) return fault;
    terms.push(term);
    at = skipSpaces(text, term.end);
    // As on a building drawing: 5'-10".
    if (isFoot(term.unit) && text[at] === "-") at = skipSpaces(text, at + 1);
  }
  return terms.length > 0 ? terms : { message: "a number was expected", position: start };
}

function readTerm(text: string, start: number, dimension: Dimension, before: Term | undefined): Term | Fault {
  const read = readNumber(text, start);
  if ("message" in read) return read;
  const unitAt = skipSpaces(text, read.end);
  const number = { number: read.value, isWhole: read.isWhole, start };
  if (unitAt === text.length) {
    if (before !== undefined && isFoot(before.unit)) return { ...number, unit: UNIT_AFTER_FEET, end: unitAt };
    const message = describeReadings({
      shown: text.slice(start, read.end),
      value: read.value,
      dimension,
      before,
    });
    return { message, position: read.end, isAnswer: true };
  }
  const unit = findUnit(text, unitAt, dimension);
  if (unit !== null) return { ...number, ...unit };
  return { message: describeWrongUnit(text, unitAt, dimension), position: unitAt };
}

interface UnitName {
  /** Lower case. */
  readonly name: string;
  readonly endsInLetter: boolean;
  readonly unit: ReadableUnit;
}

/** By their first character; longest names first, so that the first that fits is the right one. */
const UNIT_NAMES = Object.fromEntries(
  Object.entries(READABLE_UNITS).map(([dimension, units]) => [dimension, byFirst(listNames(units))]),
) as Readonly<Record<Dimension, ReadonlyMap<string, readonly UnitName[]>>>;

function byFirst(names: readonly UnitName[]): ReadonlyMap<string, readonly UnitName[]> {
  const grouped = new Map<string, UnitName[]>();
  for (const entry of names) {
    const first = entry.name[0] ?? "";
    grouped.set(first, [...(grouped.get(first) ?? []), entry]);
  }
  return grouped;
}

function listNames(units: readonly ReadableUnit[]): readonly UnitName[] {
  const names = units.flatMap((unit) => unit.names.map((name) => ({ name: name.toLowerCase(), unit })));
  const listed = names.map((entry) => ({ ...entry, endsInLetter: /[a-z0-9]$/.test(entry.name) }));
  return listed.sort((a, b) => b.name.length - a.name.length);
}

/** The longest name that stands at this place and is not the beginning of a longer word. */
function findUnit(
  text: string,
  at: number,
  dimension: Dimension,
): { unit: ReadableUnit; end: number } | null {
  const rest = text.slice(at).toLowerCase();
  for (const { name, endsInLetter, unit } of UNIT_NAMES[dimension].get(rest[0] ?? "") ?? []) {
    if (!rest.startsWith(name)) continue;
    const runsOn = endsInLetter && /[a-zµμ°/²³^]/.test(rest[name.length] ?? "");
    if (!runsOn) return { unit, end: at + name.length };
  }
  return null;
}

function describeWrongUnit(text: string, at: number, dimension: Dimension): string {
  if (/\d/.test(text[at] ?? "")) return `a unit is missing before ${quoteText(text.slice(at))}`;
  const word = /^[^\s\d]+[23²³]?/u.exec(text.slice(at))?.[0] ?? text.slice(at);
  const known = READABLE_UNITS[dimension].slice(0, 4).map((unit) => unit.names[0]);
  const wanted = known.length > 1 ? `${known.slice(0, -1).join(", ")} or ${known.at(-1)}` : known.join("");
  const other = (Object.keys(READABLE_UNITS) as Dimension[]).find((candidate) => {
    const found = findUnit(text, at, candidate);
    return found !== null && found.end === at + word.length;
  });
  const because =
    other === undefined ? "is not a unit known here" : `is the unit of ${DIMENSION_WORDS[other].name}`;
  return `${quoteText(word)} ${because}, and ${wanted} would fit`;
}

interface BareNumber {
  readonly shown: string;
  readonly value: number;
  readonly dimension: Dimension;
  readonly before: Term | undefined;
}

/** What a bare number could have meant; a length also in the other system. */
function describeReadings({ shown, value, dimension, before }: BareNumber): string {
  const possible = READABLE_UNITS[dimension].filter(
    (unit) => before === undefined || follows(before.unit, unit),
  );
  const readings = possible.slice(0, 2).map((unit) => {
    const si = unit.toSi(value);
    if (dimension !== "length" || !Number.isFinite(si)) return `${shown} ${unit.names[0]}`;
    const other = unit.names[0] === "in" ? "mm" : "inch";
    return `${shown} ${unit.names[0]} (${formatQuantity({ dimension, value: si, grain: "fine" }, other)})`;
  });
  if (dimension === "fraction" && value <= 1) readings.unshift(formatQuantity({ dimension, value }, "mm"));
  return readings.length > 0
    ? `no unit: ${readings.join(" or ")}?`
    : `nothing can follow ${quoteText(before?.unit.names[0] ?? "")}`;
}

function follows(before: ReadableUnit, unit: ReadableUnit): boolean {
  return before.family !== undefined && before.family === unit.family && unit.toSi(1) < before.toSi(1);
}

/** In `5 ft 10 in` the larger unit comes first, is whole, and the rest is less than one of it. */
function checkOrder(text: string, before: Term | undefined, term: Term): Fault | null {
  if (before === undefined) return null;
  const shown = () => quoteText(text.slice(term.start, term.end));
  if (!follows(before.unit, term.unit)) {
    return {
      message: `${shown()} cannot follow ${quoteText(text.slice(before.start, before.end))}`,
      position: term.start,
    };
  }
  if (!before.isWhole) {
    return {
      message: `${quoteText(text.slice(before.start, before.end))} should be whole where ${shown()} follows`,
      position: before.start,
    };
  }
  if (term.unit.toSi(term.number) >= before.unit.toSi(1)) {
    return { message: `${shown()} is not less than one ${before.unit.names[0]}`, position: term.start };
  }
  return null;
}
