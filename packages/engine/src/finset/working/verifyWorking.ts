import { say } from "../../foundation/phrase";
import type { WorkingInput, WorkingTable } from "../../foundation/stage";
import type { AngleReadingPlan, LengthReadingPlan, MadeForPlan, VerifyCheckPlan } from "../verify/VerifyPlan";
import {
  angleIn,
  byId,
  type Explained,
  explain,
  type FinsetContext,
  lengthIn,
  textIn,
} from "./FinsetContext";

const findCheck = ({ plan }: FinsetContext, ids: readonly string[]): VerifyCheckPlan | undefined =>
  byId(plan.finset?.verify.checks, ids[0]);

interface LengthOf {
  readonly check: VerifyCheckPlan;
  readonly reading: LengthReadingPlan;
}

const findLength = (context: FinsetContext, ids: readonly string[]): LengthOf | null => {
  const check = findCheck(context, ids);
  const reading = byId(check?.lengths, ids[1]);
  return check === undefined || reading === undefined ? null : { check, reading };
};

const ofLength = (explained: Explained<LengthOf>) => explain(findLength, explained);

/** What a target is made of, by the kind of check. */
function readTarget({ check, reading }: LengthOf, { plan }: FinsetContext): readonly WorkingInput[] {
  const mark = plan.finset?.marks.find(
    ({ fin, side }) => fin === check.fin && (check.side === null || side === check.side),
  );
  const setting = byId(plan.finset?.verify.boxes, mark?.id);
  switch (check.matter) {
    case "string":
      return [lengthIn("aim beside the nose", mark?.aimBesideNoseM)];
    case "depth-stop":
      return [
        lengthIn("D, box", mark?.box?.depthM),
        lengthIn(
          "g − p, room for resin less proud",
          setting && setting.cutOut.depthM - (mark?.box?.depthM ?? 0),
        ),
      ];
    case "proud":
      return [textIn("surface", plan.finset?.verify.surface)];
    default:
      return [lengthIn("planned", reading.targetM)];
  }
}

const ofAngle = (explained: Explained<AngleReadingPlan>) =>
  explain((context, ids) => byId(findCheck(context, ids)?.angles, ids[1]), explained);

const TARGET =
  "string: aim beside the nose; diagonals: taut tape to each mark and how the two differ; marks: as planned; depth: D + g − p; proud: p";
const TOLERANCE =
  "marks, sides, diagonals: the set-out's t; string: t (N − u)/(b cos τ); depth and proud: half a millimetre";

const ofLengths: WorkingTable<FinsetContext> = {
  "finset.verify.checks[].lengths[].targetM": ofLength({
    words: "What this reading should be.",
    formula: TARGET,
    inputs: readTarget,
  }),
  "finset.verify.checks[].lengths[].toleranceM": ofLength({
    words: "What this reading is held to; none where it is shown and not judged by itself.",
    formula: TOLERANCE,
    sources: ["common-practice"],
    inputs: (_reading, { plan }) => [lengthIn("t, tolerance of the set-out", plan.finset?.toleranceM)],
  }),
  "finset.verify.checks[].lengths[].readM": ofLength({
    words: "What was read.",
    formula: "as given in the board file; of a pair left − right",
    sources: ["convention"],
    inputs: ({ reading }) => [lengthIn("read", reading.readM)],
  }),
  "finset.verify.checks[].lengths[].errorM": ofLength({
    words: "How far the reading is from what it should be.",
    formula: "read − target",
    inputs: ({ reading: { readM, targetM } }) => [lengthIn("read", readM), lengthIn("target", targetM)],
  }),
};

const ofAngles: WorkingTable<FinsetContext> = {
  "finset.verify.checks[].angles[].targetRad": ofAngle({
    words: "Lean that the cant block, or the fin as set, should show.",
    formula: "cant as stated",
    sources: ["convention"],
    inputs: ({ targetRad }) => [angleIn("cant", targetRad)],
  }),
  "finset.verify.checks[].angles[].toleranceRad": ofAngle({
    words: "What the lean is held to.",
    formula: "one degree",
    sources: ["common-practice"],
    inputs: ({ toleranceRad }) => [angleIn("tolerance", toleranceRad)],
  }),
  "finset.verify.checks[].angles[].readRad": ofAngle({
    words: "What the gauge read.",
    formula: "as given in the board file",
    sources: ["convention"],
    inputs: ({ readRad }) => [angleIn("read", readRad)],
  }),
  "finset.verify.checks[].angles[].errorRad": ofAngle({
    words: "How far the lean is from what it should be, positive when it leans too far out.",
    formula: "read − target",
    inputs: ({ readRad, targetRad }) => [angleIn("read", readRad), angleIn("target", targetRad)],
  }),
};

const readErrors = ({ lengths, angles }: VerifyCheckPlan): readonly WorkingInput[] => [
  ...lengths.map(({ id, errorM }) => lengthIn(say`${id}, error`, errorM)),
  ...angles.map(({ id, errorRad }) => angleIn(say`${id}, error`, errorRad)),
];

const ofChange = (words: string, formula: string) =>
  explain(findCheck, { words, formula, inputs: readErrors });

const hangsOn = (words: string, key: Exclude<keyof MadeForPlan, "on">) =>
  explain((context, ids) => findCheck(context, ids)?.madeFor, {
    words: say`${words}: the check is made for it, and has to be made again where it changes.`,
    formula: "as in the plan where the check is made",
    inputs: (madeFor) => [
      key === "cantRad" ? angleIn("planned", madeFor[key]) : lengthIn("planned", madeFor[key]),
    ],
  });

const ofMadeFor: WorkingTable<FinsetContext> = {
  "finset.verify.checks[].madeFor.lengthM": hangsOn("Length of the pocket", "lengthM"),
  "finset.verify.checks[].madeFor.widthM": hangsOn("Width of the pocket", "widthM"),
  "finset.verify.checks[].madeFor.depthM": hangsOn("Depth of the pocket", "depthM"),
  "finset.verify.checks[].madeFor.cantRad": hangsOn("Cant of the fin", "cantRad"),
  "finset.verify.checks[].madeFor.baseM": hangsOn("Base of the fin", "baseM"),
};

/** How the readings before the router, and what brings them right, come about. */
export const verifyWorking: WorkingTable<FinsetContext> = {
  ...ofLengths,
  ...ofAngles,
  ...ofMadeFor,
  "finset.verify.checks[].correction.alongM": ofChange(
    "Slide of the whole fin, positive towards the nose.",
    "−mean of the errors along",
  ),
  "finset.verify.checks[].correction.trailingAcrossM": ofChange(
    "Move of the trailing mark, positive away from the centreline.",
    "−error across",
  ),
  "finset.verify.checks[].correction.leadingAcrossM": ofChange(
    "Move of the leading mark, positive away from the centreline; by the string the trailing one is held.",
    "marks: −error across; string: b (sin τ read − sin τ)",
  ),
  "finset.verify.checks[].correction.cantRad": ofChange("Change of the lean, positive outwards.", "−error"),
  "finset.verify.checks[].correction.deeperM": ofChange(
    "Change of the depth stop, positive deeper.",
    "depth stop: −error; proud height: error",
  ),
};
