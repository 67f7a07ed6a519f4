import { say } from "../../foundation/phrase";
import type { WorkingInput, WorkingTable } from "../../foundation/stage";
import type { FinMark } from "../FinMark";
import {
  angleIn,
  byId,
  type Explained,
  explain,
  type FinsetContext,
  findMark,
  lengthIn,
} from "./FinsetContext";

const ofMark = (explained: Explained<FinMark>) => explain(findMark, explained);

const readReach = (mark: FinMark, { plan }: FinsetContext): readonly WorkingInput[] => [
  lengthIn("R, from the mark to the nose", (plan.finset?.line.noseFromTailM ?? 0) - mark.trailing.fromTailM),
  angleIn("τ, toe", mark.toeRad),
];

const readBase = (mark: FinMark): readonly WorkingInput[] => [
  lengthIn("b, base", mark.baseM),
  angleIn("τ, toe", mark.toeRad),
];

/** How the worth of a millimetre and the room around a box come about. */
export const worthWorking: WorkingTable<FinsetContext> = {
  "finset.marks[].worth.baseEndRadPerM": ofMark({
    words: "Toe gained for each metre that one end of the base is off, the other held.",
    formula: "dτ/dv = 1/(b cos τ)",
    inputs: readBase,
  }),
  "finset.marks[].worth.trailingAcrossRadPerM": ofMark({
    words: "Toe gained for each metre that the trailing mark is too far out, the string's nose end held.",
    formula: "dτ/dv = cos²τ/R",
    inputs: readReach,
  }),
  "finset.marks[].worth.trailingAlongRadPerM": ofMark({
    words:
      "Toe gained for each metre that the trailing mark is too far up the board, the string's nose end held.",
    formula: "dτ/du = sin τ cos τ/R",
    inputs: readReach,
  }),
  "finset.marks[].worth.noseEndRadPerM": ofMark({
    words: "Toe lost for each metre that the string's nose end is too far out.",
    formula: "dτ/do = −cos²τ/R",
    inputs: readReach,
  }),
  "finset.marks[].rounding[].stepM": ofMark({
    words: "The finest mark of the tape that the dimensions are rounded to.",
    formula: "1/32 in, or 0.5 mm",
    sources: ["common-practice"],
    inputs: () => [],
  }),
  "finset.marks[].rounding[].byMarksRad": roundingWorking(
    "both marks set from the centreline",
    "s · 1/(b cos τ)",
    readBase,
  ),
  "finset.marks[].rounding[].byStringRad": roundingWorking(
    "trailing mark and string's nose end",
    "s · cos²τ/R",
    readReach,
  ),
  "finset.marks[].foamUnderM": ofMark({
    words: "Least foam between the box's floor and the deck; without a box, the foam over the base.",
    formula:
      "deck − (bottom + D cos γ + (w/2) sin γ), least over the box, γ the lean against the bottom's section",
    inputs: readBox,
  }),
};

function roundingWorking(
  what: string,
  formula: string,
  readMore: (mark: FinMark, context: FinsetContext) => readonly WorkingInput[],
) {
  return explain(
    (context, ids) => {
      const mark = findMark(context, ids);
      const rounding = byId(mark?.rounding, ids[1]);
      return mark && rounding ? { mark, rounding } : null;
    },
    {
      words: say`The most that rounding can turn the fin: ${what}, each off by half a step, in opposite directions.`,
      formula,
      inputs: ({ mark, rounding }, context) => [
        lengthIn("s, step", rounding.stepM),
        ...readMore(mark, context),
      ],
    },
  );
}

function readBox(mark: FinMark): readonly WorkingInput[] {
  return [
    lengthIn("D, box depth", mark.box?.depthM),
    lengthIn("w, box width", mark.box?.widthM),
    angleIn("γ, cant with the bottom's slope", mark.cantRad + mark.bottomTiltRad),
  ];
}
