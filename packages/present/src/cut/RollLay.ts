import { outlineOnRoll, type Plan, type RollPoint } from "@lapline/engine";

/** Pieces as they lie on one roll, from its free end. */
export interface RollLay {
  readonly cloth: string;
  readonly widthM: number;
  readonly lengthM: number;
  readonly placed: ReadonlyArray<{ readonly id: string; readonly points: readonly RollPoint[] }>;
  /** Straight cuts across the roll, where there are any, each to its place from the free end. */
  readonly cuts?: ReadonlyArray<{ readonly fromM: number; readonly toM: number }>;
}

type Roll = NonNullable<Plan["cutplan"]>["rolls"][number];

/** How the plan's own cuts lie on their roll. */
export function layOfRoll(roll: Roll, layup: NonNullable<Plan["layup"]>): RollLay {
  return {
    cloth: roll.cloth,
    widthM: roll.widthM,
    lengthM: roll.lengthM,
    placed: roll.placed.flatMap((placed) => {
      const pattern = layup.patterns.find(({ id }) => id === placed.pattern);
      return pattern === undefined ? [] : [{ id: placed.id, points: outlineOnRoll(pattern, placed) }];
    }),
    cuts: roll.cuts.map(({ fromStartM, lengthM }) => ({ fromM: fromStartM, toM: fromStartM + lengthM })),
  };
}
