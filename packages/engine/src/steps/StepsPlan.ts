export interface StepPlan {
  readonly id: string;
  readonly title: string;
  /** Steps that must be done first. */
  readonly after: readonly string[];
  /** Why it stands where it does. */
  readonly because: string;
  readonly handsOnS: number;
  /** Cure or rest after the hands are off; null where the model that gives it is not built or could not run. */
  readonly waitS: number | null;
  readonly cautions: readonly string[];
  readonly done: boolean;
}

export interface WaterPlan {
  readonly ready: boolean;
  readonly because: readonly string[];
  readonly firstSurfAt: string | null;
}
