import { formatQuantity, length, parseQuantity, say } from "@lapline/engine";
import { RefusedError } from "../RefusedError";

export interface RulerReads {
  readonly acrossMm: number;
  readonly upMm: number;
}

/** A printer farther off than this fits pages to the paper, and that must be switched off instead; millimetres. */
const [LEAST_MM, MOST_MM] = [90, 110];
const BETWEEN = /\s*[x×]\s*/;

/** What the printed 100 mm rulers measure: one length for both, or across and up, `99.2 mm x 99.6 mm`. Throws RefusedError. */
export function readRulerReads(given: string | true | undefined): RulerReads | undefined {
  if (given === undefined) return undefined;
  const parts = String(given).trim().split(BETWEEN);
  if (parts.length > 2) refuse(given, "it is one length, or two: across x up");
  const [acrossMm = 100, upMm = acrossMm] = parts.map((part) => readRuler(part, given));
  return { acrossMm, upMm };
}

function readRuler(text: string, given: string | true): number {
  const read = parseQuantity(text, "length");
  if (!read.ok) return refuse(given, read.message);
  // To a thousandth of a millimetre, far below what anybody can measure.
  const readMm = Math.round(read.value * 1e6) / 1e3;
  if (readMm >= LEAST_MM && readMm <= MOST_MM) return readMm;
  const shown = formatQuantity(length(read.value, "fine"), "mm");
  return refuse(
    given,
    `the 100 mm ruler reads between ${LEAST_MM} and ${MOST_MM} mm where pages are not fitted to the paper, and this is ${shown}`,
  );
}

function refuse(given: string | true, reason: string): never {
  // What would have been right may be asked as a question, which ends itself.
  const sentence = /[.?]$/.test(reason) ? reason : `${reason}.`;
  throw new RefusedError(say`--ruler-reads ${JSON.stringify(given)}: ${sentence}`);
}
