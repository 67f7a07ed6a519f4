import { GRITS, type Grit, P_GRAIN_M } from "../constants/abrasives";
import { LEVELLING_M, SCRATCH_SHARE } from "../constants/sandingModel";
import {
  ADMISSIBLE_FACTOR,
  MACHINE,
  PAPER_LIFE_M2,
  SEA_VISCOSITY_M2_S,
  SURF_SPEED_M_S,
} from "../constants/sandingWork";
import { SHOP_DEFAULTS } from "../constants/shopDefaults";
import { say } from "../foundation/phrase";
import type { Stage } from "../foundation/stage";
import { FACES, type LayupPlan } from "../layup/LayupPlan";
import { assume } from "../sources/assume";
import { checkPapers } from "./checkPapers";
import { computeTime, type SandedBoard } from "./computeTimes";
import type { LadderPlan } from "./LadderPlan";
import { listRungs, type Rung } from "./listRungs";
import type { SandingBoard } from "./SandingBoard";
import type { GritPlan, SandWorkPlan } from "./SandingPlan";

/**
 * The papers from the coat as it lies to the finish that is wanted: what each has to take out, its scratches, how often it goes over
 * the board, how long that takes and what to buy.
 * Method: each paper takes off as much as the scratches of the one before are deep; the first levels the coat.
 * @returns null without finding where the glass is not planned; null with a blocker where the builder's papers are in no order
 */
export function buildLadder(board: SandingBoard, layup: LayupPlan | null): Stage<LadderPlan> {
  if (layup === null) return { value: null, findings: [], assumptions: [] };
  const rungs = listRungs(board.glass);
  const findings = checkPapers(board.glass, rungs);
  if (findings.some(({ severity }) => severity === "blocker"))
    return { value: null, findings, assumptions: [] };
  const sanded = readSanded(board, layup);
  const admissibleRoughnessM = (ADMISSIBLE_FACTOR.value * SEA_VISCOSITY_M2_S.value) / SURF_SPEED_M_S.value;
  const times = assume(
    "sanding",
    say`sanding time from area, passes and the speed of pad and block`,
    "nobody's own times are known yet",
    "common-practice",
  );
  return {
    value: {
      grits: rungs.map((rung) => buildGrit(rung, sanded)),
      work: listWork(rungs, sanded),
      admissibleRoughnessM,
      enoughFrom: findEnough(admissibleRoughnessM),
    },
    findings,
    assumptions: [times],
  };
}

function readSanded(board: SandingBoard, layup: LayupPlan): SandedBoard {
  const areaOf = (face: "deck" | "bottom") => layup.faces.find(({ id }) => id === face)?.areaM2 ?? 0;
  return {
    areaM2: { deck: areaOf("deck"), bottom: areaOf("bottom") },
    railLineM: layup.railLineM,
    boxes: layup.fittings.length,
    experience: board.shop?.experience ?? SHOP_DEFAULTS.experience,
  };
}

function buildGrit(rung: Rung, board: SandedBoard): GritPlan {
  const { low = 0, high = 0, value } = SCRATCH_SHARE;
  const removes = rung.beforeM === null ? LEVELLING_M[rung.on] : scratchesOf(rung.beforeM);
  const time = computeTime(board, { rungs: [rung], faces: FACES, withBoxes: false });
  const passedM2 = board.areaM2.deck + board.areaM2.bottom;
  return {
    id: rung.grit,
    grit: rung.grit,
    grainM: rung.grainM,
    us: rung.us,
    on: rung.on,
    wet: rung.wet,
    onEdges: rung.onEdges,
    removesM: removes.value,
    removesLowM: removes.low ?? removes.value,
    removesHighM: removes.high ?? removes.value,
    scratchM: value * rung.grainM,
    scratchLowM: low * rung.grainM,
    scratchHighM: high * rung.grainM,
    passes: rung.wet ? 1 : MACHINE.passes.value,
    handsOnS: time.value,
    handsOnLowS: time.low,
    handsOnHighS: time.high,
    railsS: computeTime(board, { rungs: [rung], faces: FACES, withBoxes: false, onlyRails: true }).value,
    discs: rung.wet ? 0 : Math.ceil((passedM2 * MACHINE.passes.value) / PAPER_LIFE_M2.disc.value),
    sheets: Math.ceil(
      (rung.wet ? passedM2 : rung.onEdges ? railAreaM2(board) : 0) / PAPER_LIFE_M2.sheet.value,
    ),
  };
}

/** The strip along the rails that is gone over by hand, as wide as it is reckoned in the times. */
function railAreaM2({ railLineM }: SandedBoard): number {
  return railLineM * MACHINE.padWidthM.value;
}

function scratchesOf(grainM: number) {
  const { low = SCRATCH_SHARE.value, high = SCRATCH_SHARE.value, value } = SCRATCH_SHARE;
  return { value: value * grainM, low: low * grainM, high: high * grainM };
}

function listWork(rungs: readonly Rung[], board: SandedBoard): readonly SandWorkPlan[] {
  const dry = rungs.filter(({ wet }) => !wet);
  const wet = rungs.filter((rung) => rung.wet);
  const of = (id: string, time: ReturnType<typeof computeTime>): SandWorkPlan => ({
    id,
    handsOnS: time.value,
    handsOnLowS: time.low,
    handsOnHighS: time.high,
  });
  return [
    of("sand-bottom", computeTime(board, { rungs: dry, faces: ["bottom"], withBoxes: true })),
    of("sand-deck", computeTime(board, { rungs: dry, faces: ["deck"], withBoxes: false })),
    ...(wet.length > 0
      ? [of("wet-sand", computeTime(board, { rungs: wet, faces: FACES, withBoxes: false }))]
      : []),
  ];
}

/** The coarsest grade that is fine enough; the finest there is where none is. */
function findEnough(admissibleM: number): Grit {
  return GRITS.find((grit) => P_GRAIN_M[grit].value <= admissibleM) ?? GRITS.at(-1)!;
}
