import type { GlassInput } from "../layup/GlassInput";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { MixEntry } from "./MixEntry";
import type { ShopInput } from "./ShopInput";

/** What the mix needs of a board. */
export interface MixInput {
  readonly shop?: ShopInput;
  readonly materials?: MaterialsInput;
  readonly glass?: Pick<GlassInput, "tint">;
  readonly record?: readonly MixEntry[];
}
