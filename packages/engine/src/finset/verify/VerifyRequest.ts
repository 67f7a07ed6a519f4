import type { BoardShape } from "../../shape/BoardShape";
import type { AsSetPairPlan, AsSetPlan } from "../AsSetPlan";
import type { AlongBy } from "../alongTail";
import type { FinMark } from "../FinMark";
import type { PairPlan, SetOutLinePlan } from "../FinsetPlan";
import type { AsSetInput, BoxTiming } from "../FinsInput";
import type { VerifyInput } from "./VerifyInput";

/** What the gate is built from: the fins as they are to be marked, and what was read of them. */
export interface VerifyRequest {
  readonly shape: BoardShape;
  readonly along: AlongBy;
  readonly line: SetOutLinePlan;
  readonly toleranceM: number;
  readonly boxes: BoxTiming;
  readonly marks: readonly FinMark[];
  readonly pairs: readonly PairPlan[];
  readonly measured: readonly AsSetInput[];
  readonly asSet: readonly AsSetPlan[];
  readonly asSetPairs: readonly AsSetPairPlan[];
  /** Whether a blocker stands against the set as it is to be marked. */
  readonly isBlocked: boolean;
  /** Only readings that are numbers, of fins that are marked. */
  readonly read: VerifyInput;
}

/** The latest of several readings of one thing counts. */
export function findLatest<T>(list: readonly T[] | undefined, isIt: (item: T) => boolean): T | undefined {
  return list?.findLast(isIt);
}

/** One mark of each fin, to stand for both sides. */
export function listFins(marks: readonly FinMark[]): readonly FinMark[] {
  return marks.filter(({ fin }, i) => marks.findIndex((other) => other.fin === fin) === i);
}
