import { intersection, type Polygon } from "polygon-clipping";
import { type NestLay, type NestOrder, type NestSearch, searchNest } from "../src/index";

interface At {
  readonly alongM: number;
  readonly acrossM: number;
}

/** The search run to its end. */
export function nest(order: NestOrder, search: NestSearch): NestLay {
  const running = searchNest(order, search);
  let step = running.next();
  while (!step.done) step = running.next();
  return step.value;
}

export function areaOf(points: readonly At[]): number {
  const twice = points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length]!;
    return sum + a.alongM * b.acrossM - b.alongM * a.acrossM;
  }, 0);
  return Math.abs(twice) / 2;
}

const toPolygon = (points: readonly At[]): Polygon => [
  points.map(({ alongM, acrossM }): [number, number] => [alongM, acrossM]),
];

/** Area that two outlines share, by a clipping library that the search does not use (Martinez, Rueda and Feito's sweep). */
function sharedAreaM2(a: readonly At[], b: readonly At[]): number {
  return intersection(toPolygon(a), toPolygon(b)).reduce(
    (sum, [outer = [], ...holes]) =>
      sum + ringArea(outer) - holes.reduce((holeSum, hole) => holeSum + ringArea(hole), 0),
    0,
  );
}

const ringArea = (ring: ReadonlyArray<readonly [number, number]>): number =>
  areaOf(ring.map(([alongM, acrossM]) => ({ alongM, acrossM })));

/** What lies outside the roll or upon another piece; empty where all is well. */
export function listFaults(
  roll: { readonly widthM: number; readonly lengthM: number },
  placed: ReadonlyArray<{ readonly id: string; readonly points: readonly At[] }>,
): string[] {
  const slackM = 1e-7;
  const outside = placed
    .filter(({ points }) =>
      points.some(
        ({ alongM, acrossM }) =>
          alongM < -slackM ||
          alongM > roll.lengthM + slackM ||
          acrossM < -slackM ||
          acrossM > roll.widthM + slackM,
      ),
    )
    .map(({ id }) => `${id} hangs over the roll`);
  const overlaps = placed.flatMap((a, i) =>
    placed
      .slice(i + 1)
      .filter((b) => sharedAreaM2(a.points, b.points) > 1e-7)
      .map((b) => `${a.id} lies on ${b.id}`),
  );
  return [...outside, ...overlaps];
}
