import type { Typesetter } from "../../pdf/Typesetter";

/** What pieces of the Sheet are set in. */
export interface SheetRoom {
  readonly type: Typesetter;
  readonly widthMm: number;
}
