import type { MaterialsInput } from "../materials/MaterialsInput";
import type { RollsInput } from "../materials/RollsInput";

/** What the cut plan needs of a board: its rolls, and the builder's own cloths. */
export interface RollsBoard {
  readonly shop?: { readonly rolls?: RollsInput | undefined } | undefined;
  readonly materials?: MaterialsInput | undefined;
}
