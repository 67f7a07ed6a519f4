import type { BoardFile, FinsFile, Problem } from "@lapline/contract";
import type { Board, Plan } from "@lapline/engine";
import type { FieldPath } from "../board/withField";

export type Finset = NonNullable<Plan["finset"]>;
export type FinMark = Finset["marks"][number];
export type VerifyCheck = Finset["verify"]["checks"][number];
export type AsSetFile = NonNullable<FinsFile["asSet"]>[number];
export type VerifyFile = NonNullable<FinsFile["verify"]>;

/** The fins as they are typed, the plan of what is understood of them, and how to change them. */
export interface FinsForm {
  /** As it is typed. */
  readonly file: BoardFile;
  readonly fins: FinsFile;
  readonly board: Board;
  readonly plan: Plan;
  readonly problems: readonly Problem[];
  edit(path: FieldPath, value: unknown): void;
}
