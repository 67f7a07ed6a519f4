import type { BoardFile, Problem } from "@lapline/contract";
import type { Board, Plan } from "@lapline/engine";

export interface GoodBoard {
  readonly board: Board;
  readonly file: BoardFile;
  readonly plan: Plan;
}

export type PlanRead =
  | ({ readonly ok: true } & GoodBoard)
  | { readonly ok: false; readonly problems: readonly Problem[] };
