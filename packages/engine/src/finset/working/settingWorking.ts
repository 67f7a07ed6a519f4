import { POCKET_GAP_M } from "../../constants/fittings";
import { say } from "../../foundation/phrase";
import type { WorkingTable } from "../../foundation/stage";
import type { FinMark } from "../FinMark";
import type { BoxSettingPlan, GlassedOnPlan } from "../verify/VerifyPlan";
import { byId, type Explained, explain, type FinsetContext, lengthIn } from "./FinsetContext";

const ofBox = (explained: Explained<BoxSettingPlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.verify.boxes, ids[0]), explained);

const ofBase = (explained: Explained<GlassedOnPlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.verify.glassedOn, ids[0]), explained);

const markOf = ({ plan }: FinsetContext, id: string): FinMark | undefined => byId(plan.finset?.marks, id);

const readBox = ({ id }: BoxSettingPlan, context: FinsetContext) => {
  const box = markOf(context, id)?.box;
  return [
    lengthIn("l, box", box?.lengthM),
    lengthIn("w, box", box?.widthM),
    lengthIn("D, box", box?.depthM),
    lengthIn("g, room for resin", POCKET_GAP_M.value),
  ];
};

const readBase = ({ id, filletRadiusM }: GlassedOnPlan, context: FinsetContext) => [
  lengthIn("b, base", markOf(context, id)?.baseM),
  lengthIn("r, fillet", filletRadiusM),
];

const fill = (words: string, gap: string) =>
  ofBox({
    words,
    formula: say`(l + 2g)(w + 2g)(D + g) − l w D, ${gap}`,
    sources: ["geometry", "common-practice"],
    inputs: readBox,
  });

const practice = (words: string, formula: string) =>
  ofBox({ words, formula, sources: ["common-practice"], inputs: readBox });

const ofBoxes: WorkingTable<FinsetContext> = {
  "finset.verify.boxes[].cutOut.lengthM": practice(
    "Length of the pocket, and of the frame's opening.",
    "l + 2g",
  ),
  "finset.verify.boxes[].cutOut.widthM": practice(
    "Width of the pocket, and of the frame's opening.",
    "w + 2g",
  ),
  "finset.verify.boxes[].cutOut.depthM": ofBox({
    words: "Depth of the pocket from the surface that is there.",
    formula: "D + g − p",
    sources: ["common-practice"],
    inputs: (setting, context) => [...readBox(setting, context), lengthIn("p, proud", setting.proudM)],
  }),
  "finset.verify.boxes[].mostBitM": ofBox({
    words: "Thickest bit that lets a box with square corners into a pocket with round ones.",
    formula: "2 g (2 + √2), from (r − g)√2 ≤ r; no wider than the pocket",
    inputs: readBox,
  }),
  "finset.verify.boxes[].bits[].diameterM": practice(
    "Bit to use: the thickest of the common ones that still fits.",
    "largest of the sizes sold, not above the thickest that fits",
  ),
  "finset.verify.boxes[].proudM": practice(
    "How far the box stands above the surface, to be sanded flush.",
    "by the surface that is there",
  ),
  "finset.verify.boxes[].foamOverCutM": ofBox({
    words:
      "Least foam over the pocket's floor; the glass under the router is not counted, so there is rather more.",
    formula: "foam over the box − (g − p)",
    inputs: (setting, context) => [
      lengthIn("foam over the box", markOf(context, setting.id)?.foamUnderM),
      lengthIn("p, proud", setting.proudM),
    ],
  }),
  "finset.verify.boxes[].fillVolumeM3": fill("Resin with its filler around one box.", "g as taken"),
  "finset.verify.boxes[].fillVolumeLowM3": fill("The least of it.", "the least usual g"),
  "finset.verify.boxes[].fillVolumeHighM3": fill("The most of it.", "the most usual g"),
  "finset.verify.boxes[].patch.lengthM": practice("Length of the cloth over the box.", "l + 2 × overlap"),
  "finset.verify.boxes[].patch.widthM": practice("Width of the cloth over the box.", "w + 2 × overlap"),
  "finset.verify.boxes[].cureBeforeLoadS": practice(
    "How long the box is left alone; the resin's sheet goes before it where that asks for longer.",
    "a day",
  ),
};

const given = (words: string, formula: string) =>
  ofBase({ words, formula, sources: ["common-practice"], inputs: readBase });

/** How the numbers of letting a box in, or of glassing a fin on, come about. */
export const settingWorking: WorkingTable<FinsetContext> = {
  ...ofBoxes,
  "finset.verify.glassedOn[].filletRadiusM": given("Radius of the fillet in the corner.", "as taken"),
  "finset.verify.glassedOn[].filletVolumeM3": ofBase({
    words: "Rope or thickened resin in the corners of both sides of the base.",
    formula: "2 b r² (1 − π/4)",
    inputs: readBase,
  }),
  "finset.verify.glassedOn[].tackLengthM": given("Length of the tack at each end of the base.", "as taken"),
  "finset.verify.glassedOn[].patch.lengthM": given("Length of the cloth for each side.", "b + 2 × overlap"),
  "finset.verify.glassedOn[].patch.widthM": given(
    "Width of the cloth for each side, half on the fin and half on the bottom.",
    "2 × overlap",
  ),
  "finset.verify.glassedOn[].cureBeforeLoadS": given(
    "How long the fin is left alone; the resin's sheet goes before it where that asks for longer.",
    "a day",
  ),
};
