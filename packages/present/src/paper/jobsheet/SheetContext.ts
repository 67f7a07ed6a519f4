import type { Plan } from "@lapline/engine";
import type { Reader } from "../../language/Reader";
import type { Tell } from "../../language/tell";
import type { Typesetter } from "../pdf/Typesetter";
import type { FlowPiece } from "../sheet/flow/FlowPiece";
import type { Ledger } from "./Ledger";

/** What every part of the Sheet is made with. */
export interface SheetContext {
  readonly plan: Plan;
  readonly reader: Reader;
  readonly ledger: Ledger;
  readonly t: Tell;
  readonly type: Typesetter;
  readonly widthMm: number;
  /** Drawings are made smaller by so much where that saves a page; 1 at their usual size. */
  readonly drawn: number;
  /** Times run on from line to line, and lines stand closer, where that saves a page. */
  readonly runsOn: boolean;
  /** Findings that are no warning are left out where that saves a page. */
  readonly notes: boolean;
  /** Of the notes and cautions, em in millimetres. */
  readonly noteMm: number;
}

/** A part of the Sheet, in the order of the work. */
export interface SheetPart {
  readonly pieces: readonly FlowPiece[];
  /** Stands at the head of a page, where there are pages enough. */
  readonly startsPage: boolean;
}
