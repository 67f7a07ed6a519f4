import type { Board, Plan, StationInput } from "@lapline/engine";

/** The same board read at that many stations, evenly from 3 in to 3 in from the ends, with seeded reading noise of 0.5 mm. */
export function resurvey(board: Board, plan: Plan, stations: number): Board {
  const shape = plan.shape;
  if (shape === null) throw new Error(`${board.name} has no shape to read again`);
  const random = seededUniform(stations);
  const noise = () => 0.0005 * Math.sqrt(12) * (random() - 0.5);
  const first = 0.0762;
  const step = (shape.lengthM - 2 * first) / (stations - 1);
  const readings = Array.from({ length: stations }, (_, i): StationInput => {
    const fromTailM = first + i * step;
    const read = (points: ReadonlyArray<{ readonly fromTailM: number }>, key: string) =>
      interpolate(points, key, fromTailM) + noise();
    return {
      fromTailM,
      leftM: read(shape.outline, "leftM"),
      rightM: read(shape.outline, "rightM"),
      thicknessM: read(shape.profile, "thicknessM"),
      rockerM: Math.max(0, read(shape.profile, "rockerM")),
    };
  });
  const { lengthM } = shape;
  return {
    ...board,
    survey: { ...board.survey, lengthM, lengthBy: "straight", stationsBy: "straight", stations: readings },
  };
}

function interpolate(points: ReadonlyArray<{ readonly fromTailM: number }>, key: string, at: number): number {
  const above = points.findIndex((point) => point.fromTailM >= at);
  const [a, b] = [points[above - 1], points[above]];
  if (a === undefined || b === undefined) throw new RangeError(`${at} m lies off the board`);
  const share = (at - a.fromTailM) / (b.fromTailM - a.fromTailM);
  return numberAt(a, key) * (1 - share) + numberAt(b, key) * share;
}

function numberAt(point: object, key: string): number {
  return Number(Reflect.get(point, key));
}

/** A small seeded generator (mulberry32), so that each run reads the same noise. */
function seededUniform(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
