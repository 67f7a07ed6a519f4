import { type Phrase, say } from "../../foundation/phrase";
import { quoteText } from "../../foundation/quoteText";
import { type Finding, finding } from "../../foundation/stage";
import type { FinMark } from "../FinMark";
import type { BoxTiming } from "../FinsInput";
import type { VerifyInput } from "./VerifyInput";

export interface CleanReadings {
  /** Only readings that are numbers, of fins that are marked. */
  readonly read: VerifyInput;
  readonly findings: readonly Finding[];
}

interface SetRead {
  readonly marks: readonly FinMark[];
  readonly boxes: BoxTiming;
}

/** What a reading is taken of. */
type Of = "fin" | "pair" | "box" | "sized-box";

/** Sets aside readings that can be held against nothing, and says which. */
export function cleanReadings(input: VerifyInput, set: SetRead): CleanReadings {
  const findings: Finding[] = [];
  const keep = <T extends Reading>(field: string, list: readonly T[] | undefined, of: Of) =>
    (list ?? []).filter((reading, i) => {
      const path = `fins.verify.${field}[${i}]`;
      const wrong = isNumeric(reading) ? sayWrong(reading.fin, of, set) : NO_NUMBER;
      if (wrong !== null)
        findings.push(
          isNumeric(reading)
            ? finding("warning", "finset.verify-unknown", `${path}.fin`, wrong)
            : finding("warning", "finset.verify-bad", path, wrong),
        );
      return wrong === null;
    });
  const read: VerifyInput = {
    ...input,
    strings: keep("strings", input.strings, "pair"),
    diagonals: keep("diagonals", input.diagonals, "pair"),
    cantBlocks: keep("cantBlocks", input.cantBlocks, "fin"),
    depthStops: keep("depthStops", input.depthStops, "sized-box"),
    proud: keep("proud", input.proud, "box"),
  };
  return { read, findings };
}

interface Reading {
  readonly fin: string;
}

const NO_NUMBER = say`this reading is no number, so it is left aside`;

const isNumeric = (reading: Reading) =>
  Object.values<unknown>({ ...reading }).every(
    (value) => typeof value !== "number" || Number.isFinite(value),
  );

/** Why a reading of that fin means nothing here; null where it does. */
function sayWrong(fin: string, of: Of, { marks, boxes }: SetRead): Phrase | null {
  const own = marks.filter((mark) => mark.fin === fin);
  if (own.length === 0)
    return say`there is no mark for a fin named ${quoteText(fin)} to hold this reading against`;
  if (of === "pair" && own.every(({ side }) => side === "centre"))
    return say`the ${fin} fin stands on the centreline, and this is read of a fin beside it`;
  if (of !== "fin" && of !== "pair" && boxes === "glassed-on")
    return say`the ${fin} fin is glassed on, so there is no box to read this of`;
  if (of === "sized-box" && own.every(({ box }) => box === null))
    return say`no size is given for the ${fin} fin's box, so there is nothing to hold this reading against`;
  return null;
}
