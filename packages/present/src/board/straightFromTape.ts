import type { Plan } from "@lapline/engine";

/**
 * Where a tape laid along the bottom from the tail is on the straight drawing, metres. For placing ticks only: straight
 * between the plan's profile points, so within a hundredth of a millimetre of its curve at the plan's spacing.
 */
export function straightFromTape(shape: NonNullable<Plan["shape"]>, tapeM: number): number {
  const { profile } = shape;
  const after = profile.findIndex((point) => point.fromTailTapeM >= tapeM);
  if (after === -1) return shape.lengthM;
  const high = profile[after];
  const low = profile[after - 1];
  if (high === undefined || low === undefined) return 0;
  const share = (tapeM - low.fromTailTapeM) / (high.fromTailTapeM - low.fromTailTapeM);
  return low.fromTailM + share * (high.fromTailM - low.fromTailM);
}
