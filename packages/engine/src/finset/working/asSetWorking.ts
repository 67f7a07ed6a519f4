import { say } from "../../foundation/phrase";
import type { WorkingTable } from "../../foundation/stage";
import type { AsSetPairPlan, AsSetPlan } from "../AsSetPlan";
import { angleIn, byId, type Explained, explain, type FinsetContext, lengthIn } from "./FinsetContext";

const ofAsSet = (explained: Explained<AsSetPlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.asSet, ids[0]), explained);

const ofPair = (words: string, formula = "left − right") =>
  explain<AsSetPairPlan>(({ plan }, ids) => byId(plan.finset?.asSetPairs, ids[0]), {
    words,
    formula,
    inputs: (_pair, { plan }) => [lengthIn("tolerance", plan.finset?.toleranceM)],
  });

function endWorking(end: "trailing" | "leading"): WorkingTable<FinsetContext> {
  const path = `finset.asSet[].${end}`;
  const readPlanned = ({ id }: AsSetPlan, { plan }: FinsetContext) => {
    const planned = byId(plan.finset?.marks, id)?.[end];
    return [lengthIn("planned along", planned?.fromTailM), lengthIn("planned out", planned?.fromCentrelineM)];
  };
  return {
    [`${path}ErrorM`]: ofAsSet({
      words: say`How far the ${end} mark is from where it belongs, in whatever was measured of it.`,
      formula: "√(along² + across²)",
      inputs: (plan) => [lengthIn("along", plan[`${end}AlongM`]), lengthIn("across", plan[`${end}AcrossM`])],
    }),
    [`${path}AlongM`]: ofAsSet({
      words: say`How far the ${end} mark is too far towards the nose.`,
      formula: "measured − planned, both straight",
      inputs: readPlanned,
    }),
    [`${path}AcrossM`]: ofAsSet({
      words: say`How far the ${end} mark is too far out from the centreline.`,
      formula: "measured − planned",
      inputs: readPlanned,
    }),
  };
}

const readErrors = (plan: AsSetPlan, context: FinsetContext) => [
  lengthIn("trailing, along", plan.trailingAlongM),
  lengthIn("trailing, across", plan.trailingAcrossM),
  lengthIn("leading, along", plan.leadingAlongM),
  lengthIn("leading, across", plan.leadingAcrossM),
  lengthIn("tolerance", context.plan.finset?.toleranceM),
];

const ofMove = (words: string, formula: string) =>
  ofAsSet({ words, formula, sources: ["convention"], inputs: readErrors });

/** How the verdict on the fins as set comes about. */
export const asSetWorking: WorkingTable<FinsetContext> = {
  ...endWorking("trailing"),
  ...endWorking("leading"),
  "finset.asSet[].toeErrorRad": ofAsSet({
    words: "Toe as set less toe as planned, from both ends as measured.",
    formula: "atan(Δacross/Δalong) − τ, or asin(Δacross/b) − τ where a distance from the tail is missing",
    inputs: readErrors,
  }),
  "finset.asSet[].cantErrorRad": ofAsSet({
    words: "Cant as set less cant as planned.",
    formula: "measured − planned",
    inputs: ({ id }, { plan }) => [angleIn("planned", byId(plan.finset?.marks, id)?.cantRad)],
  }),
  "finset.asSet[].correction.alongM": ofMove(
    "Slide of the whole fin, taken off first where the mean error along is over the tolerance.",
    "−mean of the errors along",
  ),
  "finset.asSet[].correction.trailingAcrossM": ofMove(
    "Move of the trailing end across; nought where it is within the tolerance.",
    "−error across",
  ),
  "finset.asSet[].correction.leadingAcrossM": ofMove(
    "Move of the leading end across; nought where it is within the tolerance.",
    "−error across",
  ),
  "finset.asSet[].correction.cantRad": ofMove(
    "Change of the lean; nought within a degree.",
    "−error of cant",
  ),
  "finset.asSetPairs[].trailingDifferM": ofPair("Left less right of the trailing marks' errors across."),
  "finset.asSetPairs[].leadingDifferM": ofPair("Left less right of the leading marks' errors across."),
  "finset.asSetPairs[].alongDifferM": ofPair("Left less right of the trailing marks' errors along."),
  "finset.asSetPairs[].toeDifferRad": ofPair("Left less right of the errors of toe."),
};
