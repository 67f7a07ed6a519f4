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
  readonly ledger: readonly LedgerPlan[];
}

type Driver = "fillM" | "scratch" | "fillLevelM" | "glossLevelM" | "flushM" | "lean" | "givesM" | "ratio";
type Values = Readonly<Record<Driver, number>>;

/**
 * What each paper takes at one spot, and what is left. Model, a declared convention: a paper takes as much as the scratches of the one
 * before are deep; where the hand leans, more; on an edge the pad bears on a strip narrower than itself, and what the hand leans counts
 * by how much narrower. Scratch depth, lean and levelling are the builder's to correct by gauge or dust.
 */
export function computeSpot(spot: Spot, rungs: readonly Rung[]): SpotFilm {
  const used = spot.byHand ? rungs.filter(({ onEdges }) => onEdges) : rungs;
  const drivers = listDrivers(spot);
  const sum = (values: Values, on: readonly Rung[]) =>
    on.reduce((sumM, rung) => sumM + takenBy(spot, used, rung, values), 0);
  const onFill = used.filter(({ on }) => on === "fill");
  const hasGloss = onFill.length < used.length;
  const left = (values: Values) => values.fillM + spot.glossM - sum(values, used);
  const beforeGloss = (values: Values) => values.fillM - sum(values, onFill);
  const values = valuesOf(drivers);
  let leftM = values.fillM;
  const ledger = used.map((rung, i): LedgerPlan => {
    const takenM = takenBy(spot, used, rung, values);
    if (rung.on === "gloss" && used[i - 1]?.on !== "gloss") leftM += spot.glossM;
    leftM -= takenM;
    return { grit: rung.grit, takenM, leftM };
  });
  const remaining = computeBand(drivers, left);
  return {
    taken: computeBand(drivers, (each) => sum(each, used)),
    remaining,
    least: hasGloss ? computeBand(drivers, (each) => Math.min(beforeGloss(each), left(each))) : remaining,
    ledger,
  };
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

function takenBy(spot: Spot, used: readonly Rung[], rung: Rung, values: Values): number {
  const before = used[used.indexOf(rung) - 1];
  const levels = before === undefined || before.on !== rung.on;
  const levelM = rung.on === "gloss" ? values.glossLevelM : values.fillLevelM;
  const evenM = levels ? levelM : values.scratch * before.grainM;
  const flushM = spot.isFlange && before === undefined ? values.flushM : 0;
  return values.ratio * (evenM + flushM) * (1 + values.lean * computeBearing(spot.radiusM, values.givesM));
}

/**
 * How many times harder a soft pad bears on an edge than on a flat: it touches a strip of 2 √(2 R δ) instead of its whole width.
 * Plane geometry of a chord, for a pad that gives by δ.
 */
export function computeBearing(radiusM: number | null, givesM: number): number {
  if (radiusM === null) return 1;
  return Math.max(1, HAND_PAD.halfWidthM.value / Math.sqrt(2 * radiusM * givesM));
}
