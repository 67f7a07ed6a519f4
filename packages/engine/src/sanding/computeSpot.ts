import type { Sourced } from "../constants/Sourced";
import { FLUSH_EXTRA_M, HAND_PAD, LEAN_SHARE, LEVELLING_M, SCRATCH_SHARE } from "../constants/sandingModel";
import type { Experience } from "../constants/workTimes";
import { type Band, computeBand } from "../layup/computeBand";
import type { Rung } from "./listRungs";
import type { LedgerPlan } from "./SandingPlan";

/** A spot under the papers: its films, its edge, and what the dust says of the hand. */
export interface Spot {
  readonly fill: Band;
  readonly glossM: number;
  /** Null on flats. */
  readonly radiusM: number | null;
  /** Worked by hand with soft pads: rails, laps and ends, off which the coarsest paper stays. */
  readonly byHand: boolean;
  readonly isFlange: boolean;
  readonly experience: Experience;
  /** What goes off over what the model says; one without weighed dust. */
  readonly ratio: Band;
}

export interface SpotFilm {
  readonly taken: Band;
  readonly remaining: Band;
  readonly least: Band;
}

type Driver = "fillM" | "scratch" | "fillLevelM" | "glossLevelM" | "flushM" | "lean" | "givesM" | "ratio";
type Values = Readonly<Record<Driver, number>>;

/**
 * What each paper takes at one spot, and what is left. Model, a declared convention: a paper takes as much as the scratches of the one
 * before are deep; where the hand leans, more; on an edge the pad bears on a strip narrower than itself, and what the hand leans counts
 * by how much narrower. Scratch depth, lean and levelling are the builder's to correct by gauge or dust.
 */
export function computeSpot(spot: Spot, rungs: readonly Rung[]): SpotFilm {
  const tasks = listTasks(spot, rungs);
  const drivers = listDrivers(spot);
  const onFill = tasks.filter(({ on }) => on === "fill");
  const [all, fill] = [addUp(tasks), addUp(onFill)];
  const left = (values: Values) => values.fillM + spot.glossM - takenBy(spot, all, values);
  const beforeGloss = (values: Values) => values.fillM - takenBy(spot, fill, values);
  const remaining = computeBand(drivers, left);
  const hasGloss = onFill.length < tasks.length;
  return {
    taken: computeBand(drivers, (values) => takenBy(spot, all, values)),
    remaining,
    least: hasGloss
      ? computeBand(drivers, (values) => Math.min(beforeGloss(values), left(values)))
      : remaining,
  };
}

/** Paper by paper, without bands. */
export function computeLedger(spot: Spot, rungs: readonly Rung[]): readonly LedgerPlan[] {
  const values = valuesOf(listDrivers(spot));
  let leftM = values.fillM;
  return listTasks(spot, rungs).map((task, i, tasks): LedgerPlan => {
    const takenM = takenBy(spot, task, values);
    if (task.on === "gloss" && tasks[i - 1]?.on !== "gloss") leftM += spot.glossM;
    leftM -= takenM;
    return { grit: task.grit, takenM, leftM };
  });
}

/** What papers have to take off: how often the fill, the gloss or a flange is levelled, and the grains whose scratches go. */
interface Task {
  readonly fills: number;
  readonly glosses: number;
  readonly flanges: number;
  readonly grainM: number;
}

function listTasks(spot: Spot, rungs: readonly Rung[]): ReadonlyArray<Task & Pick<Rung, "grit" | "on">> {
  const used = spot.byHand ? rungs.filter(({ onEdges }) => onEdges) : rungs;
  return used.map(({ grit, on }, i) => {
    const before = used[i - 1];
    const levels = before === undefined || before.on !== on;
    return {
      grit,
      on,
      fills: levels && on === "fill" ? 1 : 0,
      glosses: levels && on === "gloss" ? 1 : 0,
      flanges: spot.isFlange && before === undefined ? 1 : 0,
      grainM: levels ? 0 : before.grainM,
    };
  });
}

function addUp(tasks: readonly Task[]): Task {
  const sum = { fills: 0, glosses: 0, flanges: 0, grainM: 0 };
  for (const { fills, glosses, flanges, grainM } of tasks) {
    sum.fills += fills;
    sum.glosses += glosses;
    sum.flanges += flanges;
    sum.grainM += grainM;
  }
  return sum;
}

/** With weighed dust the scale tells how much goes off, and the model's own spread no longer counts. */
function listDrivers({ fill, experience, ratio }: Spot): Readonly<Record<Driver, Sourced | Band>> {
  const isWeighed = ratio.low !== ratio.high;
  const told = (driver: Sourced): Sourced | Band =>
    isWeighed ? { value: driver.value, source: driver.source } : driver;
  return {
    fillM: fill,
    scratch: told(SCRATCH_SHARE),
    fillLevelM: told(LEVELLING_M.fill),
    glossLevelM: told(LEVELLING_M.gloss),
    flushM: FLUSH_EXTRA_M,
    lean: LEAN_SHARE[experience],
    givesM: HAND_PAD.givesM,
    ratio,
  };
}

function valuesOf(drivers: Readonly<Record<Driver, Sourced | Band>>): Values {
  return Object.fromEntries(Object.entries(drivers).map(([key, { value }]) => [key, value])) as Record<
    Driver,
    number
  >;
}

function takenBy({ radiusM }: Spot, { fills, glosses, flanges, grainM }: Task, values: Values): number {
  const levelsM = fills * values.fillLevelM + glosses * values.glossLevelM + flanges * values.flushM;
  const evenM = levelsM + values.scratch * grainM;
  return values.ratio * evenM * (1 + values.lean * computeBearing(radiusM, values.givesM));
}

/**
 * How many times harder a soft pad bears on an edge than on a flat: it touches a strip of 2 √(2 R δ) instead of its whole width.
 * Plane geometry of a chord, for a pad that gives by δ.
 */
export function computeBearing(radiusM: number | null, givesM: number): number {
  if (radiusM === null) return 1;
  return Math.max(1, HAND_PAD.halfWidthM.value / Math.sqrt(2 * radiusM * givesM));
}
