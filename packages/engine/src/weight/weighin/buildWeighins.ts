import { SCALE_STEP_KG } from "../../constants/scaleStep";
import { say } from "../../foundation/phrase";
import { mass } from "../../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../../foundation/stage";
import { standingEntries } from "../../foundation/standingEntries";
import type { CoatPlan, LayupPlan } from "../../layup/LayupPlan";
import { assume } from "../../sources/assume";
import type { WeightPlan } from "../WeightPlan";
import { checkFirstWeighing, checkWeighin } from "./checkWeighin";
import { computeAhead } from "./computeAhead";
import { computeWeighedZones } from "./computeWeighedZones";
import { computeWeighin, tellWeighed } from "./computeWeighin";
import { type Difference, makeDifference } from "./Difference";
import { readWeighings, type Weighing } from "./readWeighings";
import type { WeighinBasis, WeighinBoard } from "./WeighinBoard";
import type { WeighinPlan, WeighinsPlan } from "./WeighinsPlan";

interface Bench {
  readonly board: WeighinBoard;
  readonly layup: LayupPlan;
  readonly weight: WeightPlan;
  readonly steps: NonNullable<WeighinBasis["steps"]>;
  readonly scaleStepKg: number;
}

/**
 * The weigh-in: each weighing of the record against the one before and the plan, and what that says of the coats still to come.
 * Method: differences of the scale, less the cloth of the coats between; readings lie within half a step of the scale.
 * @returns null without finding where the record has no weighing; null with a note where the weight is not planned
 */
export function buildWeighins(
  board: WeighinBoard,
  { layup, weight, steps }: WeighinBasis,
): Stage<WeighinsPlan> {
  const nothing = { value: null, findings: [], assumptions: [] };
  if (!standingEntries(board.record ?? []).some(({ kind }) => kind === "weighed")) return nothing;
  if (layup === null || weight === null || steps === null) {
    const says = say`the weighings wait for the glass and the weight by plan`;
    return { ...nothing, findings: [finding("note", "weighins.waits", "record", says)] };
  }
  const scaleStepKg = board.shop?.scaleStepKg ?? SCALE_STEP_KG.value;
  const bench: Bench = { board, layup, weight, steps, scaleStepKg };
  const { weighings, findings } = readWeighings(board, steps);
  const built = weighings.map((to, i) => buildEntry(bench, weighings[i - 1], to));
  const differences = built.flatMap(({ difference }) => difference ?? []);
  return {
    value: {
      scaleStepKg,
      entries: built.map(({ entry }) => entry),
      ahead: computeAhead(layup, differences, laidBy(bench, weighings.at(-1))),
      zones: computeWeighedZones(layup, differences, board.materials),
    },
    findings: [...findings, ...built.flatMap((each) => each.findings)],
    assumptions: [
      ...listTaken(board),
      ...built.slice(-1).flatMap(({ entry }) => (entry.keptKg === null ? [] : listLimits())),
    ],
  };
}

function buildEntry(
  bench: Bench,
  from: Weighing | undefined,
  to: Weighing,
): {
  readonly entry: WeighinPlan;
  readonly difference: Difference | null;
  readonly findings: readonly Finding[];
} {
  const { board, layup, steps, scaleStepKg } = bench;
  const laid = laidBy(bench, to);
  const before = from === undefined ? [] : laidBy(bench, from);
  const coats = laid.filter((coat) => !before.includes(coat));
  const place = {
    id: to.id,
    after: to.after,
    coats: from === undefined ? [] : coats.map(({ id }) => id),
    massKg: to.massKg,
    plannedKg: plannedOf(bench, laid).massKg,
  };
  if (from === undefined) {
    const findings = checkFirstWeighing(place, plannedOf(bench, laid));
    return { entry: { ...place, ...UNKNOWN }, difference: null, findings };
  }
  const difference = makeDifference(layup, steps, { from, to, coats, scaleStepKg });
  const mixedKg = sumMixed(board, coats);
  const weighed = computeWeighin(difference, mixedKg, board.materials);
  const entry: WeighinPlan = {
    ...place,
    ...tellWeighed(weighed),
    plannedGainKg: place.plannedKg - plannedOf(bench, before).massKg,
    plannedKeptKg: coats.length > 0 ? difference.plannedKeptKg : null,
    mixedKg,
  };
  return { entry, difference, findings: checkWeighin(entry, difference) };
}

const UNKNOWN = {
  gainedKg: null,
  gainedLowKg: null,
  gainedHighKg: null,
  plannedGainKg: null,
  keptKg: null,
  keptLowKg: null,
  keptHighKg: null,
  plannedKeptKg: null,
  keptRatio: null,
  keptLowRatio: null,
  keptHighRatio: null,
  mixedKg: null,
  lossKg: null,
  lossLowKg: null,
  lossHighKg: null,
  glassRatio: null,
  glassLowRatio: null,
  glassHighRatio: null,
  filmM: null,
  filmLowM: null,
  filmHighM: null,
} as const;

/** Coats on the board at that place in the work. */
function laidBy({ layup, steps }: Bench, weighing: Weighing | undefined): CoatPlan[] {
  if (weighing === undefined) return [];
  const ids = new Set(steps.slice(0, weighing.at + 1).flatMap(({ coat }) => coat ?? []));
  return layup.coats.filter(({ id }) => ids.has(id));
}

function plannedOf({ weight }: Bench, laid: readonly CoatPlan[]): WeightPlan["stages"][number] {
  const ids = new Set(laid.map(({ id }) => id));
  return weight.stages.findLast(({ id }) => ids.has(id)) ?? weight.stages[0]!;
}

/** All cups of these coats in the record; null while a coat has none, as its loss cannot be told then. */
function sumMixed({ record }: WeighinBoard, coats: readonly CoatPlan[]): number | null {
  if (coats.length === 0) return null;
  const cups = standingEntries(record ?? []).filter((entry) => entry.kind === "mixed");
  const byCoat = coats.map(({ id }) => cups.filter(({ coat }) => coat === id));
  if (byCoat.some((list) => list.length === 0)) return null;
  return byCoat.flat().reduce((sumKg, { baseKg, hardenerKg }) => sumKg + baseKg + hardenerKg, 0);
}

function listTaken({ shop }: WeighinBoard): Assumption[] {
  if (shop?.scaleStepKg !== undefined) return [];
  const taken = say`a scale that shows steps of ${mass(SCALE_STEP_KG.value)}`;
  return [assume("shop.scale", taken, "the scale's smallest step was not given", SCALE_STEP_KG.source)];
}

function listLimits(): Assumption[] {
  const taken = say`cloth, what the foam drinks and what fills the weave by plan; nothing else taken off or put on between two weighings`;
  const why = "the scale knows only the whole board; weigh after trimming, before sanding";
  return [assume("weighins", taken, why, "mass-balance")];
}
