import type { BoardFile } from "@lapline/contract";
import type { Board, HouseSet, HouseSetOffer, Mesh, MeshDetail, SurveyInput } from "@lapline/engine";
import type { PlanRead } from "./GoodBoard";
import type { Understood } from "./understand";

/** Where a page has its plans from: they are worked out beside it, so that no key waits for one. */
export interface Planner {
  /** A board file's text to its plan, or to all that is wrong with the text. */
  plan(text: string): Promise<PlanRead>;
  /** A file as it was typed, with what is understood of it; `known` is the file that was understood last. */
  understand(file: BoardFile, known: BoardFile): Promise<Understood>;
  /** The solid of the readings; null where they make none. */
  mesh(survey: SurveyInput, detail: MeshDetail): Promise<Mesh | null>;
  /** A house set put on a board, in each way; none where it has no shape. */
  offers(on: Pick<Board, "survey" | "fins">, set: HouseSet): Promise<readonly HouseSetOffer[]>;
}
