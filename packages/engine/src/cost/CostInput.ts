import type { BlankInput, GlassInput } from "../layup/GlassInput";
import type { LayupPlan } from "../layup/LayupPlan";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { PriceInput } from "../materials/PriceInput";

/** What the cost needs of a board. */
export interface CostBoard {
  readonly blank?: BlankInput | undefined;
  readonly glass?: GlassInput | undefined;
  readonly materials?: MaterialsInput | undefined;
  readonly shop?:
    | {
        readonly prices?: Readonly<Record<string, PriceInput>>;
        readonly rolls?: Readonly<Record<string, { readonly price?: number }>>;
      }
    | undefined;
}

/** What was built before, as far as the cost reads it. */
export interface CostBasis {
  readonly layup: LayupPlan | null;
  readonly mix: {
    readonly coats: ReadonlyArray<{
      readonly id: string;
      readonly hardenerRatio: number | null;
      readonly cups: ReadonlyArray<{ readonly waxVolumeM3: number; readonly tintMassKg: number }>;
    }>;
  } | null;
  readonly cutplan: {
    readonly rolls: ReadonlyArray<{
      readonly cloth: string;
      readonly lengthM: number;
      readonly usedRatio: number;
    }>;
    /** Besides, for the patches of repairs. */
    readonly repairs?: ReadonlyArray<{
      readonly cloth: string;
      readonly lengthM: number;
      readonly usedRatio: number;
    }>;
  } | null;
}
