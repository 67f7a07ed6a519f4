import type { ShopInput } from "../mix/ShopInput";
import { parseWallTimeS } from "../mix/wallTime";

/** Between what the wall clock shows and time as it passes, both in seconds on one even scale. */
export interface WallClock {
  /** A reading that the wall skips is taken by the clock before the change; one that comes twice is the first. */
  readonly passedS: (wallS: number) => number;
  readonly wallS: (passedS: number) => number;
}

/**
 * Wall times in which hours pass as they do: over a change to summer time a cure of ten hours ends eleven hours later by the
 * wall. Which changes there are is data from outside: the engine knows no time zone.
 * Source: RFC 5545, 3.3.5, for readings that are skipped or come twice.
 * @param changes in order of time; times that cannot be read are left out, the contract has refused them
 */
export function buildWallClock(changes: NonNullable<ShopInput["clockChanges"]>): WallClock {
  const steps: Array<{ readonly fromWallS: number; readonly fromPassedS: number; readonly sumS: number }> =
    [];
  let sumS = 0;
  for (const { at, byS } of changes) {
    const atS = parseWallTimeS(at);
    if (atS === null) continue;
    const fromPassedS = atS - sumS;
    sumS += byS;
    steps.push({ fromWallS: Math.max(atS, atS + byS), fromPassedS, sumS });
  }
  return {
    passedS: (wallS) => wallS - (steps.findLast(({ fromWallS }) => wallS >= fromWallS)?.sumS ?? 0),
    wallS: (passedS) => passedS + (steps.findLast((step) => passedS >= step.fromPassedS)?.sumS ?? 0),
  };
}
