import type { WorkingTable } from "../../foundation/stage";
import type { FinMark } from "../FinMark";
import type { ClearancePlan } from "../FinsetPlan";
import {
  angleIn,
  byId,
  type Explained,
  explain,
  type FinsetContext,
  findMark,
  findStated,
  lengthIn,
  textIn,
} from "./FinsetContext";

const ofMark = (explained: Explained<FinMark>) => explain(findMark, explained);

const statedOfBox = (words: string, key: "lengthM" | "widthM" | "depthM") =>
  ofMark({
    words,
    formula: "as stated in the board file",
    sources: ["convention"],
    inputs: (mark) => [lengthIn("box", mark.box?.[key])],
  });

const boxEnd = (words: string, formula: string) =>
  ofMark({
    words,
    formula,
    inputs: (mark) => [
      lengthIn("u, trailing mark", mark.trailing.fromTailM),
      lengthIn("h, behind the mark", mark.box?.behindTrailingM),
      lengthIn("l, box", mark.box?.lengthM),
      angleIn("τ, toe", mark.toeRad),
    ],
  });

const corner = (words: string) =>
  ofMark({
    words,
    formula: "along the base line by the box's ends, square to it by half its width times cos γ",
    inputs: (mark) => [
      lengthIn("l, box", mark.box?.lengthM),
      lengthIn("w, box", mark.box?.widthM),
      angleIn("τ, toe", mark.toeRad),
    ],
  });

const ofClearance = (explained: Explained<ClearancePlan>) =>
  explain(({ plan }, ids) => byId(plan.finset?.clearances, ids[0]), explained);

const readStatedBox = ({ id }: ClearancePlan, context: FinsetContext) => {
  const mark = byId(context.plan.finset?.marks, id);
  return [
    lengthIn("box depth", mark?.box?.depthM),
    lengthIn("box width", mark?.box?.widthM),
    angleIn("cant", mark?.cantRad),
  ];
};

/** How the numbers of boxes, and of the room around them, come about. */
export const boxWorking: WorkingTable<FinsetContext> = {
  "finset.marks[].box.lengthM": statedOfBox("Length of the box.", "lengthM"),
  "finset.marks[].box.widthM": statedOfBox("Width of the box.", "widthM"),
  "finset.marks[].box.depthM": statedOfBox("Depth of the box.", "depthM"),
  "finset.marks[].box.behindTrailingM": ofMark({
    words:
      "How far the box reaches behind the trailing mark; where that is not given the base stands in its middle.",
    formula: "as stated, or (l − b)/2",
    sources: ["convention"],
    inputs: (mark, context) => [
      lengthIn("stated", findStated(context, mark.fin)?.box?.behindTrailingM),
      lengthIn("l, box", mark.box?.lengthM),
      lengthIn("b, base", mark.baseM),
    ],
  }),
  "finset.marks[].box.slide.backM": boxEnd("How far the fin could be slid back in its box.", "h"),
  "finset.marks[].box.slide.forwardM": boxEnd(
    "How far the fin could be slid forward in its box.",
    "l − h − base",
  ),
  "finset.marks[].box.rearFromTailM": boxEnd(
    "Rear end of the box up from the tail tips, straight.",
    "u − h cos τ",
  ),
  "finset.marks[].box.rearFromTailTapeM": boxEnd(
    "Rear end of the box by tape along the bottom.",
    "tape(u − h cos τ)",
  ),
  "finset.marks[].box.frontFromTailM": boxEnd(
    "Front end of the box up from the tail tips, straight.",
    "u + (l − h) cos τ",
  ),
  "finset.marks[].box.frontFromTailTapeM": boxEnd(
    "Front end of the box by tape along the bottom.",
    "tape(u + (l − h) cos τ)",
  ),
  "finset.marks[].box.corners[].xM": corner(
    "Corner of the cut-out along the stringer from the tail tips, for drawings.",
  ),
  "finset.marks[].box.corners[].yM": corner(
    "Corner of the cut-out to the left of the stringer, for drawings.",
  ),
  "finset.clearances[].foamBesideM": ofClearance({
    words: "Least foam beside the box, level out to the skin, at half its depth and at its floor.",
    formula: "distance outwards to where deck or bottom has the wall's height",
    inputs: readStatedBox,
  }),
  "finset.clearances[].toRailM": ofClearance({
    words: "From the corner of the box, floor included, to the nearest point of the outline.",
    formula: "least of √((x − x₀)² + (w(x) − y₀)²); negative over the edge",
    inputs: readStatedBox,
  }),
  "finset.clearances[].toStringerM": ofClearance({
    words: "From the inner edge of the box, floor included, to the middle of the stringer.",
    formula: "least |y| of the corners, the floor D sin γ farther in than the mouth",
    inputs: readStatedBox,
  }),
  "finset.clearances[].toNextM": ofClearance({
    words: "Gap in plan to the nearest other box or base, floors included.",
    formula: "least distance between the two outlines on the bottom",
    inputs: ({ next }) => [textIn("nearest", next)],
  }),
  "finset.clearances[].bowUnderBaseM": ofClearance({
    words: "How far the bottom is from a straightedge along the base: positive hollow, negative rounded.",
    formula: "largest z(s) − chord(s) along the base",
    inputs: ({ id }, { plan }) => [lengthIn("base", byId(plan.finset?.marks, id)?.baseM)],
  }),
};
