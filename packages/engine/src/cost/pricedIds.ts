import { CLOTHS } from "../constants/cloths";
import { FILLERS } from "../constants/fillers";
import { RESINS } from "../constants/resins";

/** Ids that a price can stand under without records of the builder's own; foams besides, by kind and density. */
export const PRICED_IDS: readonly string[] = [
  ...Object.keys(CLOTHS),
  ...Object.keys(RESINS).flatMap((id) => [id, `${id}-hardener`]),
  ...Object.keys(FILLERS),
  "wax",
  "tint",
  "box",
  "box-centre",
  "leash-plug",
];
