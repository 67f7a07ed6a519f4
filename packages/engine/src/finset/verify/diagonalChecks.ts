import { say } from "../../foundation/phrase";
import { length } from "../../foundation/quantity";
import type { DiagonalStart } from "../DiagonalStart";
import type { DiagonalPlan, PairPlan } from "../FinsetPlan";
import { buildReading, type CheckOf, type VerifyCheck } from "./VerifyCheck";
import { buildLength } from "./VerifyReading";
import { findLatest, type VerifyRequest } from "./VerifyRequest";

/**
 * The diagonals of each pair, both sides by taut tape.
 *
 * Only how the two sides differ is judged: what the tape reads over the board's bottom is the same on both and falls away.
 * The tolerance is the set-out's whole one: a share of it by what a millimetre across is worth from the nose (a tenth of one) is
 * finer than a tape reads, so each says what it can tell, and the marks' own distances from the line judge the rest. Those to the trailing marks are required; the string binds the leading marks to them.
 */
export function buildDiagonalChecks(request: VerifyRequest): readonly VerifyCheck[] {
  return request.pairs.flatMap((pair) =>
    pair.diagonals.map((diagonal) => buildDiagonalCheck(request, pair, diagonal)),
  );
}

const FROM = { nose: "the nose tip", tail: "the tail's middle", crotch: "the crotch" } as const;
const ENDS = {
  "nose-trailing": ["nose", "trailing"],
  "nose-leading": ["nose", "leading"],
  "tail-trailing": ["tail", "trailing"],
  "tail-leading": ["tail", "leading"],
} as const;

const HOW_TO: Readonly<Record<DiagonalStart, Readonly<Record<"trailing" | "leading", string>>>> = {
  nose: {
    trailing:
      "Hold the tape taut from the nose tip to the trailing mark on the left, then on the right. It tells a mark that slipped along the board, and hardly one that slipped across it.",
    leading:
      "Hold the tape taut from the nose tip to the leading mark on the left, then on the right. It tells a mark that slipped along the board, and hardly one that slipped across it.",
  },
  tail: {
    trailing:
      "Hold the tape taut from the tail's middle to the trailing mark on the left, then on the right. It tells a mark that slipped along the board or across it.",
    leading:
      "Hold the tape taut from the tail's middle to the leading mark on the left, then on the right. It tells a mark that slipped along the board or across it.",
  },
  crotch: {
    trailing:
      "Hold the tape taut from the crotch to the trailing mark on the left, then on the right. It tells a mark that slipped along the board or across it.",
    leading:
      "Hold the tape taut from the crotch to the leading mark on the left, then on the right. It tells a mark that slipped along the board or across it.",
  },
};

function buildDiagonalCheck(
  { toleranceM, read }: VerifyRequest,
  pair: PairPlan,
  { id, from: start, leftTapeM, rightTapeM, differM }: DiagonalPlan,
): VerifyCheck {
  const [from, to] = ENDS[id];
  const taken = findLatest(
    read.diagonals,
    (reading) => reading.fin === pair.id && reading.from === from && reading.to === to,
  );
  const differ = buildLength({
    id: "differ",
    targetM: differM,
    toleranceM,
    readM: taken && taken.leftM - taken.rightM,
  });
  const what: CheckOf = {
    id: `diagonal-${pair.id}-${id}`,
    matter: "diagonals",
    how: HOW_TO[start][to],
    fin: pair.id,
    from: start,
    required: to === "trailing",
  };
  return buildReading(what, {
    lengths: [
      buildLength({ id: "left", targetM: leftTapeM, toleranceM: null, readM: taken?.leftM }),
      buildLength({ id: "right", targetM: rightTapeM, toleranceM: null, readM: taken?.rightM }),
      differ,
    ],
    cure: () => {
      const errorM = differ.errorM ?? 0;
      return {
        correction: null,
        says: say`from ${FROM[start]} to the ${to} marks of the ${pair.id} fins the left diagonal is ${length(Math.abs(errorM), "fine")} too ${errorM > 0 ? "long" : "short"} against the right: measure both marks again from the tail and from the centreline, since one of them has slipped`,
      };
    },
  });
}
