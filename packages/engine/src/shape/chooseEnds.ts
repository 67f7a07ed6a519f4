import type { SmoothPrior } from "../geometry/fitSmooth";
import { legendreValues } from "../geometry/legendre";
import { MeanFit, type MeanRow } from "./MeanFit";
import { MEAN_TERMS } from "./OutlineCurve";
import type { EndPrior, OutlineClass } from "./outlineClass";
import type { OutlineReading } from "./outlineReadings";

/** The outline's two end numbers, how freely the smooth function between them may bend, and how true the tape was. */
export interface EndsChoice {
  readonly ends: OutlineClass;
  /** In metres of half-width. */
  readonly loosenessM: number;
  /** The readings' own spread as a share of the stated uncertainty, at most 1. */
  readonly noiseShare: number;
  /** What the choice itself adds to −2 ln evidence: its own improbability. */
  readonly surprise: number;
}

export interface EndsSearch {
  readonly lengthM: number;
  readonly cornered: boolean;
  readonly tail: EndPrior;
  readonly nose: EndPrior;
  readonly prior: SmoothPrior;
  /** What the readings' own spread may be, as shares of the stated uncertainty. */
  readonly noiseShares: ReadonlyArray<{
    readonly share: number;
    /** −2 ln evidence of that spread from the sides' differences. */
    readonly differencesMisfit: number;
  }>;
}

interface Found {
  readonly tail: number;
  readonly nose: number;
  readonly looseness: number;
  readonly noiseShare: number;
  readonly surprise: number;
  readonly misfit: number;
}

/** Where one side's reading stands alone, the mean is known only as well as boards are symmetrical. */
const ONE_SIDE_SD_M = 0.002;
/** Looseness expected before the readings speak, and the spread of its logarithm. */
const EXPECTED_LOOSENESS = 1;
const LOOSENESS_LOG_SD = 1;
const NOISE_LOG_SD = 0.7;
const SEARCH_ROUNDS = 6;

/**
 * Chooses the ends, the looseness and the noise that make the mean half-widths most probable: a pattern search over the
 * two end numbers, at each of which the evidence picks the rest. Of the sides' differences only their spread enters, for
 * where both sides are read they are independent of the mean.
 */
export function chooseEnds(readings: readonly OutlineReading[], search: EndsSearch): EndsChoice | null {
  const rows = meanRows(readings, search.lengthM);
  const scale = Math.max(...rows.map((row) => row.value));
  const fit = new MeanFit(rows, scale);
  // The search comes back to places where it has been; none of them can be better than the best.
  const tried = new Set<string>();
  let best: Found | null = null;
  const tryAt = (tail: number, nose: number): boolean => {
    if (tail < search.tail.low || tail > search.tail.high) return false;
    if (nose < search.nose.low || nose > search.nose.high) return false;
    const place = `${tail} ${nose}`;
    if (tried.has(place)) return false;
    tried.add(place);
    const found = weighEnds(fit, search, { tail, nose });
    if (best !== null && !(found.misfit < best.misfit)) return false;
    best = found;
    return true;
  };
  tryAt(search.tail.mean, search.nose.mean);
  for (let round = 0; round < SEARCH_ROUNDS; round++) {
    const tailStep = search.tail.step / 2 ** round;
    const noseStep = search.nose.step / 2 ** round;
    for (let moves = 0, moved = true; moved && moves < 8; moves++) {
      const { tail, nose } = best!;
      moved = tryAt(tail, nose + noseStep) || tryAt(tail, nose - noseStep);
      const at = (best! as Found).nose;
      moved = tryAt(tail + tailStep, at) || tryAt(tail - tailStep, at) || moved;
    }
  }
  const { tail, nose, looseness, noiseShare, surprise, misfit } = best! as Found;
  if (!Number.isFinite(misfit)) return null;
  return {
    ends: { cornered: search.cornered, tail, nose },
    loosenessM: looseness * scale,
    noiseShare,
    surprise,
  };
}

/** The most probable looseness and noise at given ends. */
function weighEnds(
  fit: MeanFit,
  { cornered, tail: tailPrior, nose: nosePrior, prior, noiseShares }: EndsSearch,
  { tail, nose }: { readonly tail: number; readonly nose: number },
): Found {
  fit.closeEnds({ cornered, tail, nose });
  const ownSurprise = unlikelihood(tail, tailPrior) + unlikelihood(nose, nosePrior);
  let best: Found = {
    tail,
    nose,
    looseness: 1,
    noiseShare: 1,
    surprise: 0,
    misfit: Number.POSITIVE_INFINITY,
  };
  for (const { share: noiseShare, differencesMisfit } of noiseShares) {
    fit.readWith(noiseShare);
    for (let k = 0; k < prior.looseness.length; k++) {
      const looseness = prior.looseness[k]!;
      const surprise =
        ownSurprise +
        2 * (MEAN_TERMS - prior.order) * Math.log(looseness) +
        (Math.log(looseness / EXPECTED_LOOSENESS) / LOOSENESS_LOG_SD) ** 2 +
        (Math.log(noiseShare) / NOISE_LOG_SD) ** 2;
      const misfit = fit.misfitUnder(prior.penalties[k]!) + differencesMisfit + surprise;
      if (misfit < best.misfit) best = { tail, nose, looseness, noiseShare, surprise, misfit };
    }
  }
  return best;
}

/** Long-tailed (Cauchy), so that readings which speak clearly are not argued with. */
function unlikelihood(value: number, { mean, sd }: EndPrior): number {
  return 2 * Math.log(1 + ((value - mean) / sd) ** 2);
}

function meanRows(readings: readonly OutlineReading[], lengthM: number): MeanRow[] {
  const rows: MeanRow[] = [];
  for (const { station, sideSign, xM, valueM, sdM } of readings) {
    const other = readings.find((r) => r.station === station && r.sideSign === -sideSign);
    // A station read on both sides is one row, made where its left side comes up.
    if (sideSign === -1 && other !== undefined) continue;
    const xi = xM / lengthM;
    const legendre = legendreValues(2 * xi - 1, MEAN_TERMS);
    const row = { xi, legendre, value: valueM, tapeSd: sdM, sideSd: 0 };
    if (sideSign === 0) rows.push(row);
    else if (other === undefined) rows.push({ ...row, sideSd: ONE_SIDE_SD_M });
    else rows.push({ ...row, value: (valueM + other.valueM) / 2, tapeSd: sdM / Math.SQRT2 });
  }
  return rows;
}
