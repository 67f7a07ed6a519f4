import type { FinsInput } from "../finset/FinsInput";
import type { BlankInput, GlassInput } from "../layup/GlassInput";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { ShopInput } from "../mix/ShopInput";
import type { RecordEntry } from "./RecordEntry";

/** What the order of work needs of a board. */
export interface StepsInput {
  readonly survey: {
    readonly lengthM: number;
    readonly stations?: ReadonlyArray<{
      readonly leftM?: number;
      readonly rightM?: number;
      readonly widthM?: number;
    }>;
  };
  readonly blank?: BlankInput;
  readonly glass?: GlassInput;
  readonly fins?: FinsInput;
  readonly shop?: ShopInput;
  readonly materials?: MaterialsInput;
  readonly record?: readonly RecordEntry[];
}
