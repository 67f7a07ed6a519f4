import type { CoatKind, CoatPlan } from "../layup/LayupPlan";

/** Where in the work the boxes go in; `after-fill` where nothing is said. */
type BoxPlace = "before-glass" | "after-laminate" | "after-fill" | "glassed-on";

/** Places in the work, first to last. */
const RANKS: Readonly<Record<Exclude<CoatKind, "box">, number>> = {
  seal: 0,
  laminate: 2,
  fill: 4,
  gloss: 6,
  repair: 7,
  "repair-fill": 7,
};
const BOX_RANKS: Readonly<Record<BoxPlace, number>> = {
  "before-glass": 1,
  "after-laminate": 3,
  "glassed-on": 3,
  "after-fill": 5,
};

/** The coats in the order they go on; the leash plug goes in with boxes, and after the fill coat beside glassed-on fins. */
export function orderCoats(coats: readonly CoatPlan[], boxes: BoxPlace = "after-fill"): readonly CoatPlan[] {
  const rankOf = ({ id, kind }: CoatPlan): number => {
    if (id === "boxes") return BOX_RANKS[boxes];
    if (kind !== "box") return RANKS[kind];
    return BOX_RANKS[boxes === "glassed-on" ? "after-fill" : boxes];
  };
  return coats
    .map((coat, i) => ({ coat, i, rank: rankOf(coat) }))
    .sort((a, b) => a.rank - b.rank || a.i - b.i)
    .map(({ coat }) => coat);
}
