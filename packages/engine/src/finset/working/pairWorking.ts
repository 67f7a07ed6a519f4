import { say } from "../../foundation/phrase";
import type { Told, WorkingTable } from "../../foundation/stage";
import type { DiagonalPlan, FinsetPlan, PairPlan, SidesComparedPlan } from "../FinsetPlan";
import {
  angleIn,
  byId,
  type Explained,
  explain,
  type FinsetContext,
  findStated,
  lengthIn,
  textIn,
} from "./FinsetContext";

const ofSet = (explained: Explained<FinsetPlan>) => explain(({ plan }) => plan.finset, explained);

const ofPair = (explained: Explained<PairPlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.pairs, ids[0]), explained);

const ofDiagonal = (words: Told, formula: string) =>
  explain<DiagonalPlan>(({ plan }, ids) => byId(byId(plan.finset?.pairs, ids[0])?.diagonals, ids[1]), {
    words,
    formula,
    inputs: ({ id, from }, { plan }, ids) => {
      const end = id.endsWith("trailing") ? "trailing" : "leading";
      const at = (side: string) => byId(plan.finset?.marks, `${ids[0]}-${side}`)?.[end].at;
      const fromXM = from === "nose" ? plan.shape?.lengthM : (plan.finset?.line.crotchFromTailM ?? 0);
      return [
        lengthIn(say`${from}, along the stringer`, fromXM),
        lengthIn("left mark, along the stringer", at("left")?.xM),
        lengthIn("left mark, y", at("left")?.yM),
        lengthIn("right mark, along the stringer", at("right")?.xM),
        lengthIn("right mark, y", at("right")?.yM),
      ];
    },
  });

const ofCompared = (explained: Explained<SidesComparedPlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.sidesCompared, ids[0]), explained);

const ofComparedPair = (words: string, formula: string) =>
  explain<SidesComparedPlan["pairs"][number]>(
    ({ plan }, ids) => byId(byId(plan.finset?.sidesCompared, ids[0])?.pairs, ids[1]),
    {
      words,
      formula,
      inputs: ({ id }, context) => [lengthIn("r, stated from the rail", findStated(context, id)?.fromRailM)],
    },
  );

const readSymmetry = (_plan: FinsetPlan, { plan }: FinsetContext) => [
  lengthIn("shift at half length", plan.shape?.symmetry.centrelineShiftM),
  angleIn("skew", plan.shape?.symmetry.centrelineSkewRad),
];

const lines: WorkingTable<FinsetContext> = {
  "finset.asymmetryM": ofSet({
    words:
      "How far apart the two fins of a pair would stand from the line if each followed its own rail, for the worst pair.",
    formula: "largest |left − right| of half-width − r",
    inputs: ({ pairs }) => pairs.map(({ id, differM }) => lengthIn(say`${id}, left less right`, differM)),
  }),
  "finset.toleranceM": ofSet({
    words: "How far a mark may be off.",
    formula: "as stated, or 1 mm",
    sources: ["common-practice"],
    inputs: (_plan, { board }) => [lengthIn("stated", board.fins?.toleranceM)],
  }),
  "finset.line.atTailM": ofSet({
    words:
      "Where the line the set is laid out about stands at the tail tips, left of the stringer: nought unless it is the best-fit centreline.",
    formula: "shift − tan(skew) · L/2",
    inputs: readSymmetry,
  }),
  "finset.line.atNoseM": ofSet({
    words: "Where that line stands at the nose tip, left of the stringer.",
    formula: "shift + tan(skew) · L/2",
    inputs: readSymmetry,
  }),
  "finset.line.skewRad": ofSet({
    words: "How far that line turns to the left of the stringer.",
    formula: "skew of the best-fit centreline",
    inputs: readSymmetry,
  }),
  "finset.line.noseFromTailM": ofSet({
    words: "Where the square from the nose tip meets the line, from the tail tips.",
    formula: "L cos ψ − c sin ψ",
    inputs: ({ line }, { plan }) => [
      lengthIn("L, straight length", plan.shape?.lengthM),
      lengthIn("c, line at the tail", line.atTailM),
      angleIn("ψ, turn of the line", line.skewRad),
    ],
  }),
  "finset.line.crotchFromTailM": ofSet({
    words: "How deep the notch of the swallow tail is, straight.",
    formula: "where the notch closes on the stringer",
    inputs: () => [],
  }),
};

const pairs: WorkingTable<FinsetContext> = {
  "finset.pairs[].differM": ofPair({
    words:
      "Left less right: how far apart the marks would stand from the line if each followed its own rail.",
    formula: "(left half-width − r) − (right half-width − r)",
    inputs: ({ id }, context) => [lengthIn("r, stated from the rail", findStated(context, id)?.fromRailM)],
  }),
  ...Object.fromEntries(
    (["left", "right"] as const).flatMap((side) => [
      [
        `finset.pairs[].${side}FromRailM`,
        ofPair({
          words: say`What the ${side} trailing mark reads from its own rail.`,
          formula: "half-width − distance from the line",
          inputs: (pair) => [lengthIn("from the line", pair[`${side}FromCentrelineM`])],
        }),
      ],
      [
        `finset.pairs[].${side}FromCentrelineM`,
        ofPair({
          words: say`How far the ${side} trailing mark stands from the line.`,
          formula: "by the rule for the two sides",
          inputs: (_pair, { plan }) => [textIn("rule", plan.finset?.sides)],
        }),
      ],
    ]),
  ),
};

const POINTS = "from the nose tip, or the tail's middle (the crotch of a swallow), to the mark";
const diagonals: WorkingTable<FinsetContext> = {
  "finset.pairs[].diagonals[].leftM": ofDiagonal(say`Straight in plan ${POINTS} on the left.`, "√(Δx² + y²)"),
  "finset.pairs[].diagonals[].rightM": ofDiagonal(
    say`Straight in plan ${POINTS} on the right.`,
    "√(Δx² + y²)",
  ),
  "finset.pairs[].diagonals[].leftTapeM": ofDiagonal(
    say`With a taut tape along the bottom ${POINTS} on the left. A rockered bottom that is flat across unrolls.`,
    "√(Δtape² + y²)",
  ),
  "finset.pairs[].diagonals[].rightTapeM": ofDiagonal(
    say`With a taut tape along the bottom ${POINTS} on the right. A rockered bottom that is flat across unrolls.`,
    "√(Δtape² + y²)",
  ),
  "finset.pairs[].diagonals[].differM": ofDiagonal(
    "Left less right by tape: nought proves the pair symmetric about the line through the two points, and no more.",
    "left − right",
  ),
  "finset.pairs[].diagonals[].acrossWorthRatio": ofDiagonal(
    "How much one side's diagonal changes for each millimetre that its mark is off across the board.",
    "|y| / √(Δx² + y²)",
  ),
  "finset.pairs[].diagonals[].alongWorthRatio": ofDiagonal(
    "How much one side's diagonal changes for each millimetre that its mark is off along the board.",
    "|Δx| / √(Δx² + y²)",
  ),
};

const compared: WorkingTable<FinsetContext> = {
  "finset.sidesCompared[].asymmetryM": ofCompared({
    words:
      "How far apart the two fins of the worst pair would stand from this rule's line if each followed its own rail.",
    formula: "largest |left − right| of half-width − r",
    inputs: ({ id }) => [textIn("rule", id)],
  }),
  "finset.sidesCompared[].pairs[].leftFromRailM": ofComparedPair(
    "From the left rail, by this rule.",
    "half-width − v",
  ),
  "finset.sidesCompared[].pairs[].rightFromRailM": ofComparedPair(
    "From the right rail, by this rule.",
    "half-width − v",
  ),
  "finset.sidesCompared[].pairs[].leftFromStringerM": ofComparedPair(
    "Left mark from the stringer, by this rule.",
    "|y|",
  ),
  "finset.sidesCompared[].pairs[].rightFromStringerM": ofComparedPair(
    "Right mark from the stringer, by this rule.",
    "|y|",
  ),
  "finset.sidesCompared[].pairs[].leftToeRad": ofComparedPair(
    "Toe of the left fin, by this rule.",
    "as finset.marks[].toeRad",
  ),
  "finset.sidesCompared[].pairs[].rightToeRad": ofComparedPair(
    "Toe of the right fin, by this rule.",
    "as finset.marks[].toeRad",
  ),
  "finset.sidesCompared[].pairs[].leftMovesM": ofComparedPair(
    "How far the left mark would move away from the stringer against the rule in force.",
    "|y| by this rule − |y| by the rule in force",
  ),
  "finset.sidesCompared[].pairs[].rightMovesM": ofComparedPair(
    "How far the right mark would move away from the stringer against the rule in force.",
    "|y| by this rule − |y| by the rule in force",
  ),
  "finset.sidesCompared[].pairs[].fromStringerDifferM": ofComparedPair(
    "Left less right from the stringer.",
    "left − right",
  ),
  "finset.sidesCompared[].pairs[].fromRailDifferM": ofComparedPair(
    "Left less right from their own rails.",
    "left − right",
  ),
};

/** How the numbers of the line, the pairs, the diagonals and the three rules come about. */
export const pairWorking: WorkingTable<FinsetContext> = { ...lines, ...pairs, ...diagonals, ...compared };
