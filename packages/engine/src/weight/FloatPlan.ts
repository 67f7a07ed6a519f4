/** The finished board pushed just under still sea water, by Archimedes. */
export interface FloatPlan {
  readonly waterDensityKgM3: number;
  /** Sea water that the shaped volume pushes aside. */
  readonly displacesKg: number;
  readonly displacesLowKg: number;
  readonly displacesHighKg: number;
  /** What it carries beside itself before it goes under. */
  readonly carriesKg: number;
  readonly carriesLowKg: number;
  readonly carriesHighKg: number;
  /** Null where the order does not say what the rider weighs. */
  readonly riderKg: number | null;
  /** What it still carries under the rider; below nought the rider's own body must float the rest. */
  readonly reserveKg: number | null;
  readonly reserveLowKg: number | null;
  readonly reserveHighKg: number | null;
}
