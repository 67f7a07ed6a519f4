import { SCRATCH_SHARE } from "../constants/sandingModel";
import { HAND, MACHINE, PAPER_LIFE_M2, SURF_SPEED_M_S } from "../constants/sandingWork";
import { area, fraction, length } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { bandWorking } from "../layup/bandWorking";
import { fromSanding, type SandingContext } from "./SandingContext";
import type { GritPlan, SandingPlan } from "./SandingPlan";

const gritInputs = (list: (grit: GritPlan, sanding: SandingPlan) => readonly WorkingInput[]) =>
  fromSanding((sanding, [id]) => {
    const grit = sanding.grits.find((candidate) => candidate.id === id);
    return grit === undefined ? [] : list(grit, sanding);
  });

const faces = fromSanding((_sanding, _ids, { plan }) => [
  ...(plan.layup?.faces ?? []).map(({ id, areaM2 }): WorkingInput => ({ name: id, value: area(areaM2) })),
  { name: "pad", value: length(MACHINE.padWidthM.value) },
  { name: "overlap of the lanes", value: fraction(MACHINE.overlapShare.value) },
  { name: "passes, one along and one across", value: String(MACHINE.passes.value) },
  { name: "feed, metres a second", value: String(MACHINE.feedMPerS.value) },
  {
    name: "strokes over each spot of a rail, and wet",
    value: `${HAND.railStrokes.value}, ${HAND.wetStrokes.value}`,
  },
]);

const TIME =
  "practice × Σ (area × passes / (pad × (1 − overlap) × feed), or area × strokes / (pad × speed) wet, + rails + a look after each paper + boxes)";

/** How each number of the ladder comes about. */
export const ladderWorking: WorkingTable<SandingContext> = {
  "sanding.grits[].grainM": {
    words: "mean grain of the grade",
    formula: "as the chart has it",
    sources: ["fepa-chart"],
    inputs: gritInputs(() => []),
  },
  ...bandWorking<SandingContext>("sanding.grits[].removes", "M", {
    words: "goes off a flat under an even hand: the scratches of the paper before, or what levels the coat",
    formula: "scratch share × grain of the paper before; the first of a coat: levelling",
    sources: ["metal-roughness-chart", "convention"],
    inputs: gritInputs((grit, { grits }) => {
      const before = grits[grits.indexOf(grit) - 1];
      if (before === undefined || before.on !== grit.on) return [{ name: "paper before", value: "none" }];
      return [
        { name: "scratch share", value: fraction(SCRATCH_SHARE.value) },
        { name: before.grit, value: length(before.grainM, "fine") },
      ];
    }),
  }),
  ...bandWorking<SandingContext>("sanding.grits[].scratch", "M", {
    words: "depth of the scratches that it leaves",
    formula: "scratch share × grain",
    sources: ["metal-roughness-chart"],
    inputs: gritInputs(({ grainM }) => [
      { name: "scratch share", value: fraction(SCRATCH_SHARE.value) },
      { name: "grain", value: length(grainM, "fine") },
    ]),
  }),
  "sanding.grits[].passes": {
    words: "how often it goes over the whole face: along and across; wet once, in strokes",
    formula: "common practice",
    sources: ["common-practice"],
    inputs: gritInputs(() => []),
  },
  ...bandWorking<SandingContext>("sanding.grits[].handsOn", "S", {
    words: "time for the hands with this paper on both faces and the rails, boxes left out",
    formula: TIME,
    sources: ["common-practice"],
    inputs: faces,
  }),
  "sanding.grits[].railsS": {
    words: "of that time along rails, laps and ends, by hand; the rest is the flats and a look after each",
    formula: "practice × rail line × lanes × strokes / speed",
    sources: ["common-practice"],
    inputs: faces,
  },
  "sanding.grits[].discs": {
    words: "discs to buy for the machine",
    formula: "area × passes / life of a disc, rounded up",
    sources: ["common-practice"],
    inputs: gritInputs(() => [{ name: "life of a disc", value: area(PAPER_LIFE_M2.disc.value) }]),
  },
  "sanding.grits[].sheets": {
    words: "sheets to buy for the hand: along the rails, or wet over all",
    formula: "area / life of a sheet, rounded up",
    sources: ["common-practice"],
    inputs: gritInputs(() => [{ name: "life of a sheet", value: area(PAPER_LIFE_M2.sheet.value) }]),
  },
  ...bandWorking<SandingContext>("sanding.work[].handsOn", "S", {
    words: "time for the hands at this step, all its papers and the boxes",
    formula: TIME,
    sources: ["common-practice"],
    inputs: faces,
  }),
  "sanding.admissibleRoughnessM": {
    words:
      "a smoother surface gains no speed by the book; measured plates found fine sanding still above polished",
    formula: "k = 100 ν / U",
    sources: ["schlichting-roughness", "ittc-water", "sanded-hulls"],
    inputs: () => [{ name: "speed U, metres a second", value: String(SURF_SPEED_M_S.value) }],
  },
};
