import type { Plan, Side } from "@lapline/engine";

type Shape = NonNullable<Plan["shape"]>;

/** The half-widths that were read on one side, in the order of the survey. */
export function sideReadings(shape: Shape, side: Side): Shape["readings"] {
  return shape.readings.filter(({ path }) => path.endsWith(`].${side}`));
}
