import type { BlankBoard } from "../layup/GlassInput";

/** What the weight needs of a board: its blank, when the boxes go in, and what the rider weighs. */
export interface WeightBoard extends BlankBoard {
  readonly fins?:
    | { readonly boxes?: "before-glass" | "after-laminate" | "after-fill" | "glassed-on" }
    | undefined;
  readonly order?: { readonly riderMassKg?: number } | undefined;
}
