import type { AirPiece } from "./AirPiece";

/** Whether cold stretches count: a cure is credited only where the resin cures, a window goes on closing in the cold. */
export type Counting = "credited" | "closing";

/** How far a cure has come at any time, in gel times of one cup. */
export interface CureCurve {
  /** Seconds from `startS` until it has come so many gel times further; null where the air is not known for so long. */
  readyS(startS: number, gels: number, counting: Counting): number | null;
  /** Gel times from one time to another. */
  gelsBetween(startS: number, untilS: number, counting: Counting): number;
  /** Mean of the air that was credited from `startS` on, until so many gel times; null where none was. */
  meanK(startS: number, gels: number): number | null;
}

/**
 * Adds up a cure through the day's and night's air once, so that every stage of every coat, begun at any time, is read off
 * the same sum: progress = ∫ dt / t_gel(T(t)). Exact for even stretches; in between the stretches' length is the error.
 * @param pieces in order of time and without gaps, from nought on
 * @param gelS gel time of the cup in even air of that temperature, s
 * @param leastK below it no progress is credited
 */
export function buildCureCurve(
  pieces: readonly AirPiece[],
  gelS: (airK: number) => number,
  leastK: number,
): CureCurve {
  const sums = addUp(pieces, gelS, leastK);
  return {
    readyS(startS, gels, counting) {
      const readyS = inverse(sums, sums[counting], at(sums, sums[counting], startS) + gels);
      return readyS === null ? null : Math.max(0, readyS - startS);
    },
    gelsBetween: (startS, untilS, counting) =>
      at(sums, sums[counting], untilS) - at(sums, sums[counting], startS),
    meanK(startS, gels) {
      const endS =
        inverse(sums, sums.credited, at(sums, sums.credited, startS) + gels) ?? sums.timeS.at(-1) ?? 0;
      const creditedS = at(sums, sums.creditedS, endS) - at(sums, sums.creditedS, startS);
      const kelvinS = at(sums, sums.kelvinS, endS) - at(sums, sums.kelvinS, startS);
      return creditedS > 0 ? kelvinS / creditedS : null;
    },
  };
}

/** Each sum from nought to each piece's end. */
interface Sums {
  readonly timeS: number[];
  readonly credited: number[];
  readonly closing: number[];
  readonly creditedS: number[];
  readonly kelvinS: number[];
}

function addUp(pieces: readonly AirPiece[], gelS: (airK: number) => number, leastK: number): Sums {
  const sums: Sums = {
    timeS: [pieces[0]?.fromS ?? 0],
    credited: [0],
    closing: [0],
    creditedS: [0],
    kelvinS: [0],
  };
  const known = new Map<number, number>();
  pieces.forEach(({ fromS, toS, airK }, i) => {
    const wholeS = known.get(airK) ?? gelS(airK);
    known.set(airK, wholeS);
    const lengthS = toS - fromS;
    const creditedS = airK < leastK ? 0 : lengthS;
    sums.timeS.push(toS);
    sums.closing.push(sums.closing[i]! + lengthS / wholeS);
    sums.credited.push(sums.credited[i]! + creditedS / wholeS);
    sums.creditedS.push(sums.creditedS[i]! + creditedS);
    sums.kelvinS.push(sums.kelvinS[i]! + creditedS * airK);
  });
  return sums;
}

/** A sum at any time, by straight lines between the pieces' ends; flat outside them. */
function at({ timeS }: Sums, sum: readonly number[], wantedS: number): number {
  const i = firstNotBelow(timeS, wantedS);
  if (i === 0) return sum[0]!;
  if (i === timeS.length) return sum[i - 1]!;
  const share = (wantedS - timeS[i - 1]!) / (timeS[i]! - timeS[i - 1]!);
  return sum[i - 1]! + share * (sum[i]! - sum[i - 1]!);
}

/** The first time at which a sum has come so far; null where it never does. */
function inverse({ timeS }: Sums, sum: readonly number[], wanted: number): number | null {
  const i = firstNotBelow(sum, wanted);
  if (i === sum.length) return null;
  if (i === 0) return timeS[0]!;
  const share = (wanted - sum[i - 1]!) / (sum[i]! - sum[i - 1]!);
  return timeS[i - 1]! + share * (timeS[i]! - timeS[i - 1]!);
}

function firstNotBelow(rising: readonly number[], wanted: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}
