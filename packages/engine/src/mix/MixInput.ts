import type { MaterialsInput } from "../materials/MaterialsInput";
import type { MixEntry } from "./MixEntry";
import type { ShopInput } from "./ShopInput";
import type { TintInput } from "./TintInput";

/** What the mix needs of a board. */
export interface MixInput {
  readonly shop?: ShopInput;
  readonly materials?: MaterialsInput;
  readonly glass?: TintInput;
  readonly record?: readonly MixEntry[];
}
