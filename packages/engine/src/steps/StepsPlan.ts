import type { Phrase } from "../foundation/phrase";

export interface StepPlan {
  readonly id: string;
  readonly title: string;
  /** Steps that must be done first. */
  readonly after: readonly string[];
  /** The same, each with how far its coat must have come and why. */
  readonly needs: readonly NeedPlan[];
  /** Why it stands where it does. */
  readonly because: string;
  /** The coat that it lays; null for other work. */
  readonly coat: string | null;
  /** The coat by whose clock its resin cures; null for work without resin. */
  readonly cures: string | null;
  readonly handsOnS: number;
  /**
   * Cure or rest after the hands are off, until the first of the steps that follow; null where the model that gives it is
   * not built or could not run.
   */
  readonly waitS: number | null;
  /**
   * How long a box, a fin's base or the leash plug bears no load: the later of the usual day and its resin's full cure; null
   * for other steps, and where that resin's clock is not known.
   */
  readonly noLoadS: number | null;
  /** What to have at hand beside the coat's own resin and cloth. */
  readonly materials: readonly string[];
  /** What to have in reach, in words. */
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
  readonly done: boolean;
  /** Local wall time of its latest mark; null where none is given, and for what is still to do. */
  readonly doneAt: string | null;
}

/** How far a coat, or bare foam, must have come. */
export type CoatStage = "hands-off" | "dry" | "trim" | "flip" | "recoat" | "sandable";

interface NeedPlan {
  readonly step: string;
  readonly until: CoatStage;
  readonly because: string;
  /** After the hands are off; nought where that is enough; null where not known. */
  readonly waitS: number | null;
}

export interface WaterPlan {
  readonly ready: boolean;
  /** Foam shows somewhere, or a box or the plug is not sealed in: "not for water" stands on every page, sheet and command. */
  readonly barred: boolean;
  /** What stands against the water, what bars it first; none once it is ready. */
  readonly open: readonly OpenPlan[];
  readonly firstSurfAt: string | null;
}

export interface OpenPlan {
  /** In millimetres and English; `says` has the same with its quantities kept. */
  readonly text: string;
  readonly says: Phrase;
  /** The step that closes it; null where the order of work is not known. */
  readonly step: string | null;
  readonly bars: boolean;
}
