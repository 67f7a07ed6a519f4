import { formatQuantity } from "./formatQuantity";
import { listPhrases } from "./listPhrases";
import { formatPhrase, type Phrase, say } from "./phrase";
import type { Dimension } from "./quantity";
import { quoteText } from "./quoteText";
import { DIMENSION_WORDS, isFoot, READABLE_UNITS, type ReadableUnit, UNIT_AFTER_FEET } from "./readableUnits";
import { type Fault, readNumber, skipSpaces } from "./readNumber";

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      /** In English, with the text that was read. */
      readonly message: string;
      /** The same without that text, for where it stands beside it and in the reader's language. */
      readonly says: Phrase;
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
  if (text.length > LONGEST_TEXT) {
    const says = say`${text.length} characters are too many; ${LONGEST_TEXT} are enough for ${wanted(dimension)}`;
    return refuse(says, LONGEST_TEXT, `${quoteText(text)}: `);
  }
  const start = skipSpaces(text, 0);
  if (start === text.length) return refuse(say`nothing was read; write ${wanted(dimension)}`, 0);
  const result = readSigned(text, start, dimension);
  if ("value" in result) return { ok: true, value: result.value };
  const { says, position, isAnswer } = result;
  if (isAnswer) return refuse(says, position, `${quoteText(text)}, character ${position + 1}: `);
  const placed = say`character ${position + 1}: ${says}; write ${wanted(dimension)}`;
  return refuse(placed, position, `${quoteText(text)}, `);
}

function refuse(says: Phrase, position: number, before = ""): ParsedQuantity {
  return { ok: false, message: before + formatPhrase(says, "mm"), says, position };
}

/** What would be right: a length with its unit, such as "11 1/4 in". */
function wanted(dimension: Dimension): Phrase {
  const { name, example } = DIMENSION_WORDS[dimension];
  return dimension === "count"
    ? say`${name} such as ${example}`
    : say`${name} with its unit, such as "${example}"`;
}

function readSigned(text: string, start: number, dimension: Dimension): { value: number } | Fault {
  const first = text[start] ?? "";
  const isSigned = first === "-" || first === "−" || first === "+";
  const isNegative = isSigned && first !== "+";
  if (isNegative && !MAY_BE_NEGATIVE.has(dimension)) {
    return { says: say`${DIMENSION_WORDS[dimension].name} cannot be negative`, position: start };
  }
  const at = isSigned ? skipSpaces(text, start + 1) : start;
  if (dimension === "count") return readBareCount(text, at);
  const terms = readTerms(text, at, dimension);
  if ("says" in terms) return terms;
  const sign = isNegative ? -1 : 1;
  const [only, ...others] = terms;
  if (only === undefined) return { says: say`nothing was read`, position: start };
  if (others.length === 0) return finite(only.unit.toSi(sign * only.number), only.start);
  return finite(sign * terms.reduce((sum, term) => sum + term.unit.toSi(term.number), 0), only.start);
}

function finite(value: number, position: number): { value: number } | Fault {
  // "-0 mm" is nought like any other.
  return Number.isFinite(value)
    ? { value: value === 0 ? 0 : value }
    : { says: say`the number is too large`, position };
}

function readBareCount(text: string, start: number): { value: number } | Fault {
  const read = readNumber(text, start);
  if ("says" in read) return read;
  const end = skipSpaces(text, read.end);
  if (end < text.length)
    return { says: say`${quoteText(text.slice(end))} follows the number`, position: end };
  return { value: read.value };
}

function readTerms(text: string, start: number, dimension: Dimension): readonly Term[] | Fault {
  const terms: Term[] = [];
  for (let at = start; at < text.length; ) {
    const term = readTerm(text, at, dimension, terms.at(-1));
    if ("says" in term) return term;
    const fault = checkOrder(text, terms.at(-1), term);
    if (fault !== null) return fault;
    terms.push(term);
    at = skipSpaces(text, term.end);
    // As on a building drawing: 5'-10".
    if (isFoot(term.unit) && text[at] === "-") at = skipSpaces(text, at + 1);
  }
  return terms.length > 0 ? terms : { says: say`a number was expected`, position: start };
}

function readTerm(text: string, start: number, dimension: Dimension, before: Term | undefined): Term | Fault {
  const read = readNumber(text, start);
  if ("says" in read) return read;
  const unitAt = skipSpaces(text, read.end);
  const number = { number: read.value, isWhole: read.isWhole, start };
  if (unitAt === text.length) {
    if (before !== undefined && isFoot(before.unit)) return { ...number, unit: UNIT_AFTER_FEET, end: unitAt };
    const says = describeReadings({
      shown: text.slice(start, read.end),
      value: read.value,
      dimension,
      before,
    });
    return { says, position: read.end, isAnswer: true };
  }
  const unit = findUnit(text, unitAt, dimension);
  if (unit !== null) return { ...number, ...unit };
  return { says: describeWrongUnit(text, unitAt, dimension), position: unitAt };
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

function describeWrongUnit(text: string, at: number, dimension: Dimension): Phrase {
  if (/\d/.test(text[at] ?? "")) return say`a unit is missing before ${quoteText(text.slice(at))}`;
  const word = quoteText(/^[^\s\d]+[23²³]?/u.exec(text.slice(at))?.[0] ?? text.slice(at));
  const known = READABLE_UNITS[dimension].slice(0, 4).map((unit) => say`${unit.names[0] ?? ""}`);
  const [last = [], others] = [known.at(-1), known.slice(0, -1)];
  const fitting = others.length > 0 ? say`${listPhrases(others, "comma")} or ${last}` : last;
  const other = (Object.keys(READABLE_UNITS) as Dimension[]).find((candidate) => {
    const found = findUnit(text, at, candidate);
    return found !== null && quoteText(text.slice(at, found.end)) === word;
  });
  return other === undefined
    ? say`${word} is not a unit known here, and ${fitting} would fit`
    : say`${word} is the unit of ${DIMENSION_WORDS[other].name}, and ${fitting} would fit`;
}

interface BareNumber {
  readonly shown: string;
  readonly value: number;
  readonly dimension: Dimension;
  readonly before: Term | undefined;
}

/** What a bare number could have meant; a length also in the other system. */
function describeReadings({ shown, value, dimension, before }: BareNumber): Phrase {
  const possible = READABLE_UNITS[dimension].filter(
    (unit) => before === undefined || follows(before.unit, unit),
  );
  const readings = possible.slice(0, 2).map((unit) => {
    const si = unit.toSi(value);
    const reading = `${shown} ${unit.names[0]}`;
    if (dimension !== "length" || !Number.isFinite(si)) return say`${reading}`;
    const other = unit.names[0] === "in" ? "mm" : "inch";
    return say`${reading} (${formatQuantity({ dimension, value: si, grain: "fine" }, other)})`;
  });
  if (dimension === "fraction" && value <= 1)
    readings.unshift(say`${formatQuantity({ dimension, value }, "mm")}`);
  const [first, ...others] = readings;
  if (first === undefined) return say`nothing can follow ${quoteText(before?.unit.names[0] ?? "")}`;
  return say`no unit: ${orOf(first, others)}?`;
}

function orOf(first: Phrase, others: readonly Phrase[]): Phrase {
  return others.reduce((list, next) => say`${list} or ${next}`, first);
}

function follows(before: ReadableUnit, unit: ReadableUnit): boolean {
  return before.family !== undefined && before.family === unit.family && unit.toSi(1) < before.toSi(1);
}

/** In `5 ft 10 in` the larger unit comes first, is whole, and the rest is less than one of it. */
function checkOrder(text: string, before: Term | undefined, term: Term): Fault | null {
  if (before === undefined) return null;
  const shown = quoteText(text.slice(term.start, term.end));
  const first = quoteText(text.slice(before.start, before.end));
  if (!follows(before.unit, term.unit))
    return { says: say`${shown} cannot follow ${first}`, position: term.start };
  if (!before.isWhole)
    return { says: say`${first} should be whole where ${shown} follows`, position: before.start };
  if (term.unit.toSi(term.number) >= before.unit.toSi(1))
    return { says: say`${shown} is not less than one ${before.unit.names[0] ?? ""}`, position: term.start };
  return null;
}
