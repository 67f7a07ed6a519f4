import type { CautionId } from "../constants/cautions";
import type { SpreadKind, WorkId } from "../constants/workTimes";
import type { Face } from "../layup/LayupPlan";
import type { Choices } from "./Choices";
import type { CoatStage } from "./StepsPlan";

/** One step of the table: when it is called for, what goes before and why, what it takes. */
export interface StepRow {
  readonly id: string;
  readonly title: string | ((choices: Choices) => string);
  readonly when: (choices: Choices) => boolean;
  readonly because: string;
  /** Those whose step is not in this board's plan fall away. */
  readonly needs: readonly NeedRow[];
  readonly labour: Labour;
  /** What to have at hand, resin and cloth of the coat itself left out. */
  readonly materials?: readonly string[] | ((choices: Choices) => readonly string[]);
  readonly cautions: readonly CautionId[];
  /** Waits for every repair as well. */
  readonly isAfterRepairs?: boolean;
  /** Nothing is done here but to wait until every coat is as hard as it becomes. */
  readonly isCureOut?: boolean;
}

export interface NeedRow {
  readonly step: string;
  readonly until: CoatStage;
  readonly because: string;
  /** Where the step it names stands earlier only on some boards. */
  readonly when?: (choices: Choices) => boolean;
}

/** Resin work takes its time from the cups, other work from a table. */
export type Labour =
  | { readonly kind: "coat"; readonly coat: string; readonly spread: SpreadKind }
  | { readonly kind: "work"; readonly work: WorkId; readonly faces: readonly Face[] };
