import type { Plan } from "@lapline/engine";
import type { Drawing } from "@lapline/present";

interface Place {
  readonly fromTailM: number;
  readonly leftM: number;
}

/** Where on the board a point of its drawing lies, in millimetres of the sheet. */
export function placeOnBoard({ frame }: Pick<Drawing, "frame">, xMm: number, yMm: number): Place {
  const { origin, alongMmPerM, acrossMmPerM } = frame;
  const on = (axis: { readonly x: number; readonly y: number }): number =>
    ((xMm - origin.x) * axis.x + (yMm - origin.y) * axis.y) / (axis.x ** 2 + axis.y ** 2);
  return { fromTailM: on(alongMmPerM), leftM: on(acrossMmPerM) };
}

/** The half-width that was read nearest to a place, on its own side; null where none was read within reach. */
export function readingAt(plan: Plan, { fromTailM, leftM }: Place, reachM: number): string | null {
  const side = leftM < 0 ? "right" : "left";
  const near = (plan.shape?.readings ?? [])
    .filter(({ path }) => new RegExp(`^survey\\.stations\\[\\d+\\]\\.(?:${side}|width)$`).test(path))
    .map((reading) => ({ path: reading.path, offM: Math.abs(reading.fromTailM - fromTailM) }))
    .filter(({ offM }) => offM <= reachM)
    .toSorted((a, b) => a.offM - b.offM);
  return near[0]?.path ?? null;
}
