import { type Phrase, quoteText, say } from "@lapline/engine";
import { type Node, type ParseError, parseTree, printParseErrorCode } from "jsonc-parser";
import { LARGEST_BOARD_FILE_BYTES } from "../largestBoardFile";
import { countParts, DEEPEST_NESTING, MOST_VALUES } from "./countParts";
import type { Fault } from "./Fault";
import { findRepeats } from "./findRepeats";
import { formatPlace } from "./formatPlace";

export type JsonRead =
  | { readonly ok: true; readonly value: unknown; readonly root: Node; readonly faults: readonly Fault[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The document in a text, with the place of each of its parts. Size and nesting are looked at before anything is parsed; a
 * field given twice in one object is a fault, because one of the two readings would be lost.
 */
export function readJson(text: string): JsonRead {
  const hopeless = checkSize(text) ?? checkStructure(text);
  if (hopeless !== null) return { ok: false, faults: [hopeless] };
  const errors: ParseError[] = [];
  const json = text.startsWith("\ufeff") ? ` ${text.slice(1)}` : text;
  const root = parseTree(json, errors, { disallowComments: true });
  if (errors.length > 0 || root === undefined) return { ok: false, faults: describeErrors(json, errors) };
  try {
    const value: unknown = JSON.parse(json);
    return { ok: true, value, root, faults: findRepeats(root, json) };
  } catch {
    return {
      ok: false,
      faults: [{ steps: [], read: "text that is not JSON", says: say`write the board file as JSON` }],
    };
  }
}

function checkSize(text: string): Fault | null {
  if (text.length > LARGEST_BOARD_FILE_BYTES) {
    const says = say`a board file has at most ${LARGEST_BOARD_FILE_BYTES / 1e6} MB; is this one?`;
    return { steps: [], read: `${Math.ceil(text.length / 1e5) / 10} MB of text`, says };
  }
  if (text.trim() !== "") return null;
  return {
    steps: [],
    read: "nothing",
    says: say`the file is empty; a board file begins with { "format": "lapline-board/1"`,
  };
}

function checkStructure(text: string): Fault | null {
  const { tooMany } = countParts(text);
  if (tooMany === null) return null;
  const place = formatPlace(text, tooMany.at);
  if (tooMany.of === "brackets") {
    const says = say`a board file is never more than ${DEEPEST_NESTING} brackets deep`;
    return { steps: [], read: `brackets inside brackets at ${place}`, says };
  }
  const says = say`a board file never has more than ${MOST_VALUES} values`;
  return { steps: [], read: `one value after the other, up to ${place}`, says };
}

const WANTED: Readonly<Record<string, Phrase>> = {
  InvalidSymbol: say`outside quotes only numbers, true, false and null may stand; leave out a reading that was not taken`,
  InvalidNumberFormat: say`write a number plainly, or a quantity with its unit in quotes`,
  PropertyNameExpected: say`a field's name in double quotes belongs here, and no comma behind the last field`,
  ValueExpected: say`a value belongs here, and no comma behind the last one`,
  ColonExpected: say`a colon belongs behind the field's name`,
  CommaExpected: say`a comma belongs before this`,
  CloseBraceExpected: say`a closing brace, }, is missing`,
  CloseBracketExpected: say`a closing bracket, ], is missing`,
  EndOfFileExpected: say`nothing may follow the closing brace of the file`,
  InvalidCommentToken: say`JSON has no comments`,
  UnexpectedEndOfComment: say`JSON has no comments`,
  UnexpectedEndOfString: say`a closing quote is missing on this line`,
  UnexpectedEndOfNumber: say`a digit is missing`,
  InvalidEscapeCharacter: say`behind a backslash only " \\ / b f n r t or u with four digits may stand`,
  InvalidUnicode: say`behind \\u four hexadecimal digits belong`,
  InvalidCharacter: say`a control character may not stand inside quotes`,
};

/** Of several errors the later ones mostly follow from the first. */
function describeErrors(text: string, errors: readonly ParseError[]): Fault[] {
  const [first] = errors;
  if (first === undefined)
    return [{ steps: [], read: quoteText(text), says: say`write the board file as JSON` }];
  const { error, offset, length } = first;
  const found =
    offset >= text.length
      ? "the end of the file"
      : quoteText(text.slice(offset, offset + Math.max(length, 1)));
  const says = say`not JSON: ${WANTED[printParseErrorCode(error)] ?? say`something else belongs here`}`;
  const isAfterQuote = text.slice(0, offset).trimEnd().endsWith('"');
  const whole = isAfterQuote ? say`${says}. An inch mark inside quotes is written \\", or in` : says;
  return [{ steps: [], read: `${found} at ${formatPlace(text, offset)}`, says: whole }];
}
