import { say } from "../../foundation/phrase";
import type { WorkingInput, WorkingTable } from "../../foundation/stage";
import type { FinMark, MarkPoint } from "../FinMark";
import type { ToeInput } from "../FinsInput";
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

const stated = (words: string, inputs: Explained<FinMark>["inputs"]) =>
  ofMark({ words, formula: "as stated in the board file", sources: ["convention"], inputs });

function readToe(toe: ToeInput | undefined, met: FinMark | undefined): readonly WorkingInput[] {
  switch (toe?.kind) {
    case "aimBesideNose":
      return [lengthIn("o, aim beside the nose tip", toe.offsetM)];
    case "aimBeyondNose":
      return [lengthIn("e, aim beyond the nose tip", toe.beyondM)];
    case "overBase":
      return [lengthIn("a, toe over the base", toe.overM)];
    case "angle":
      return [angleIn("τ, stated", toe.angleRad)];
    case "meets":
      return [
        textIn("meets the line of", toe.fin),
        lengthIn("o, where that line crosses beside the nose tip", met?.aimBesideNoseM),
      ];
    default:
      return [textIn("stated toe", "none: along the centreline")];
  }
}

/** The mark whose line the fin is stated to meet, on its own side. */
function findMet({ fin, side }: FinMark, context: FinsetContext): FinMark | undefined {
  const toe = findStated(context, fin)?.toe;
  if (toe?.kind !== "meets") return undefined;
  return context.plan.finset?.marks.find((mark) => mark.fin === toe.fin && mark.side === side);
}

const readBase = (mark: FinMark, { plan }: FinsetContext): readonly WorkingInput[] => [
  lengthIn("u, trailing mark along the line", mark.trailing.fromTailM),
  lengthIn("v, trailing mark out from the line", mark.trailing.fromCentrelineM),
  lengthIn("N, nose tip along the line", plan.finset?.line.noseFromTailM),
];

const turn: WorkingTable<FinsetContext> = {
  "finset.marks[].baseM": stated("Length of the fin's base along the bottom.", (mark) => [
    lengthIn("base", mark.baseM),
  ]),
  "finset.marks[].toeRad": ofMark({
    words: "How far the fin's front points in. Every way of stating it is turned into this angle.",
    formula:
      "beside the nose: τ = atan((v − o)/(N − u)); beyond it: τ = atan(v/(N + e − u)); over the base: τ = asin(a/b)",
    inputs: (mark, context) => [
      ...readBase(mark, context),
      lengthIn("b, base", mark.baseM),
      ...readToe(findStated(context, mark.fin)?.toe, findMet(mark, context)),
    ],
  }),
  "finset.marks[].toeOverBaseM": ofMark({
    words: "How much nearer the front of the base stands to the centreline than its trailing end.",
    formula: "a = b sin τ",
    inputs: (mark) => [lengthIn("b, base", mark.baseM), angleIn("τ, toe", mark.toeRad)],
  }),
  "finset.marks[].aimBesideNoseM": ofMark({
    words:
      "Where a string along the base crosses the square at the nose tip, out from the centreline on the fin's side.",
    formula: "o = v − (N − u) tan τ",
    inputs: (mark, context) => [...readBase(mark, context), angleIn("τ, toe", mark.toeRad)],
  }),
  "finset.marks[].aimBeyondNoseM": ofMark({
    words:
      "How far beyond the nose tip a string along the base meets the centreline; none for a fin that points along it or out.",
    formula: "e = v/tan τ − (N − u)",
    inputs: (mark, context) => [...readBase(mark, context), angleIn("τ, toe", mark.toeRad)],
  }),
  "finset.marks[].cantRad": stated(
    "Lean of the fin outwards, by a gauge that sits on the bottom at the mark.",
    (mark) => [angleIn("cant", mark.cantRad)],
  ),
  "finset.marks[].bottomTiltRad": ofMark({
    words: "Slope of the surveyed bottom under the gauge, square to the stringer.",
    formula: "β = atan(rise/run), over 10 mm to each side of the mark",
    inputs: (mark) => [lengthIn("out from the stringer", mark.trailing.fromStringerM)],
  }),
  "finset.marks[].twistRad": ofMark({
    words: "Twist of the board at the mark against half length, spread evenly between tail and nose.",
    formula: "from survey.twist",
    inputs: (mark) => [lengthIn("along the board", mark.trailing.fromTailM)],
  }),
  "finset.marks[].trueCantRad": ofMark({
    words:
      "How far the fin leans against the board's level at half length; the gauge cannot see slope and twist.",
    formula: "left: c + β + t; right: c + β − t; centre: c + t, to the left",
    inputs: (mark) => [
      angleIn("c, cant by the gauge", mark.cantRad),
      angleIn("β, slope of the bottom", mark.bottomTiltRad),
      angleIn("t, twist", mark.twistRad),
    ],
  }),
  "finset.marks[].depthM": stated("Depth of the fin.", (mark) => [lengthIn("depth", mark.depthM)]),
  "finset.marks[].sweepRad": stated("Sweep of the fin.", (mark) => [angleIn("sweep", mark.sweepRad)]),
  "finset.marks[].foil.thicknessRatio": stated("Thickness of the foil as a share of its chord.", (mark) => [
    textIn("foil", mark.foil?.kind),
  ]),
};

const END_WORDS = { trailing: "trailing", leading: "leading" } as const;

function pointWorking(end: "trailing" | "leading"): WorkingTable<FinsetContext> {
  const path = `finset.marks[].${end}`;
  const name = END_WORDS[end];
  const ofPoint = (explained: Explained<MarkPoint>) =>
    explain((context, ids) => findMark(context, ids)?.[end], explained);
  const along = (point: MarkPoint) => [lengthIn("along the line", point.fromTailM)];
  const across = (point: MarkPoint) => [
    ...along(point),
    lengthIn("out from the line", point.fromCentrelineM),
  ];
  return {
    [`${path}.fromTailM`]: end === "trailing" ? trailingAlong() : leadingAlong(),
    [`${path}.fromTailTapeM`]: ofPoint({
      words: say`The ${name} mark as a tape along the bottom reads it from the tail tips.`,
      formula: "length of the bottom's curve: ∫ √(1 + (dz/dx)²) dx",
      inputs: along,
    }),
    [`${path}.fromCrotchTapeM`]: ofPoint({
      words: say`The ${name} mark as a tape from the crotch of the swallow tail reads it.`,
      formula: "tape to the mark − tape to the crotch",
      inputs: (point, { plan }) => [
        lengthIn("tape to the mark", point.fromTailTapeM),
        lengthIn("crotch, straight", plan.finset?.line.crotchFromTailM),
      ],
    }),
    [`${path}.fromCentrelineM`]: end === "trailing" ? trailingAcross() : leadingAcross(),
    [`${path}.fromStringerM`]: ofPoint({
      words: say`The ${name} mark out from the stringer, square to it: the same as from the line unless the set is laid out about the best-fit centreline.`,
      formula: "|c + u sin ψ ± v cos ψ|, the line c left of the stringer at the tail and turned by ψ",
      inputs: (point, { plan }) => [
        ...across(point),
        lengthIn("c, line at the tail", plan.finset?.line.atTailM),
        angleIn("ψ, turn of the line", plan.finset?.line.skewRad),
      ],
    }),
    [`${path}.fromRailM`]: ofPoint({
      words: say`The ${name} mark in from the outline on the fin's own side, square to the line.`,
      formula: "w(u) − v, w the half-width from the line on the fin's own side",
      inputs: (point) => [
        lengthIn("u, along the line", point.fromTailM),
        lengthIn("w(u), half-width there", point.fromRailM + point.fromCentrelineM),
        lengthIn("v, out from the line", point.fromCentrelineM),
      ],
    }),
    [`${path}.toRailM`]: ofPoint({
      words: say`Shortest distance from the ${name} mark to the outline, as a tape swung about the mark finds it.`,
      formula: "least of √((x − x₀)² + (w(x) − y₀)²) over x",
      inputs: across,
    }),
    [`${path}.at.xM`]: ofPoint({
      words: say`The ${name} mark along the stringer from the tail tips, for drawings.`,
      formula: "u cos ψ ∓ v sin ψ",
      inputs: across,
    }),
    [`${path}.at.yM`]: ofPoint({
      words: say`The ${name} mark to the left of the stringer, for drawings.`,
      formula: "c + u sin ψ ± v cos ψ",
      inputs: across,
    }),
  };
}

const trailingAlong = () =>
  ofMark({
    words: "The trailing mark up from the tail tips, straight.",
    formula:
      "stated distance; by tape turned straight along the bottom's curve, from a crotch the crotch added",
    inputs: (mark, context) => [
      lengthIn("stated", findStated(context, mark.fin)?.fromTailM),
      textIn("by", context.board.fins?.fromTailBy ?? "tape"),
      textIn("from", context.board.fins?.fromTailOf ?? "tips"),
    ],
  });

const leadingAlong = () =>
  ofMark({
    words: "The front end of the base up from the tail tips, straight.",
    formula: "u + b cos τ",
    inputs: readLeading,
  });

const trailingAcross = () =>
  ofMark({
    words: "How far the trailing mark stands from the line, by the rule for the two sides.",
    formula: "rail: own half-width − r; average and centreline: the mean of left and right of that",
    inputs: (mark, context) => [
      lengthIn("r, stated from the rail", findStated(context, mark.fin)?.fromRailM),
      textIn("rule", context.plan.finset?.sides),
      lengthIn("left less right, each by its own rail", byId(context.plan.finset?.pairs, mark.fin)?.differM),
    ],
  });

const leadingAcross = () =>
  ofMark({
    words: "How far the front end of the base stands from the line.",
    formula: "v − b sin τ",
    inputs: readLeading,
  });

function readLeading(mark: FinMark, context: FinsetContext): readonly WorkingInput[] {
  return [
    ...readBase(mark, context).slice(0, 2),
    lengthIn("b, base", mark.baseM),
    angleIn("τ, toe", mark.toeRad),
  ];
}

/** How the numbers of one fin's place and turn come about. */
export const markWorking: WorkingTable<FinsetContext> = {
  ...turn,
  ...pointWorking("trailing"),
  ...pointWorking("leading"),
};
