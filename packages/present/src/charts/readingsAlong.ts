import type { Plan } from "@lapline/engine";

type Shape = NonNullable<Plan["shape"]>;

/** What is read along the stringer. */
export type AlongKind = "thickness" | "rocker";

export interface AlongReading {
  readonly fromTailM: number;
  readonly readM: number;
  /** What the curve has there. */
  readonly fittedM: number;
  /** Read less fitted. */
  readonly residualM: number;
  readonly suspect: boolean;
}

/** The readings of one kind in order from tail to nose, each with its curve's value there. */
export function readingsAlong({ readings }: Shape, kind: AlongKind): readonly AlongReading[] {
  return readings
    .filter(({ path }) => path.endsWith(`.${kind}`))
    .map(({ fromTailM, readM, residualM, suspect }) => ({
      fromTailM,
      readM,
      fittedM: readM - residualM,
      residualM,
      suspect,
    }))
    .sort((a, b) => a.fromTailM - b.fromTailM);
}
