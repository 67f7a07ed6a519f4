import type { Path64 } from "clipper2-ts";

const UM_PER_M = 1e6;

/** Clipper reckons in whole numbers: an outline in micrometres. */
export function toMicrometres(points: ReadonlyArray<readonly [number, number]>): Path64 {
  return points.map(([x, y]) => ({ x: Math.round(x * UM_PER_M), y: Math.round(y * UM_PER_M) }));
}

export function fromMicrometres(path: Path64): Array<readonly [number, number]> {
  return path.map(({ x, y }) => [x / UM_PER_M, y / UM_PER_M] as const);
}

export const inMicrometres = (lengthM: number): number => lengthM * UM_PER_M;
