import type { EntryBase } from "../../foundation/EntryBase";
import type { BlankInput, GlassInput } from "../../layup/GlassInput";
import type { LayupPlan } from "../../layup/LayupPlan";
import type { MaterialsInput } from "../../materials/MaterialsInput";
import type { WeightPlan } from "../WeightPlan";

/** The entries of the record that a weigh-in reads; the others only take their place where they are corrected. */
export type WeighinEntry =
  | (EntryBase & { readonly kind: "weighed"; readonly after: string; readonly massKg: number })
  | (EntryBase & {
      readonly kind: "mixed";
      readonly coat: string;
      readonly baseKg: number;
      readonly hardenerKg: number;
    })
  | (EntryBase & { readonly kind: "done"; readonly step: string })
  | (EntryBase & { readonly kind: "touched" | "sand-through" | "film" | "dust" | "struck" });

/** What a weigh-in needs of a board. */
export interface WeighinBoard {
  readonly blank?: BlankInput | undefined;
  readonly glass?: GlassInput | undefined;
  readonly materials?: MaterialsInput | undefined;
  readonly shop?: { readonly scaleStepKg?: number } | undefined;
  readonly record?: readonly WeighinEntry[] | undefined;
}

/** What was built before; the steps in the order of the work. */
export interface WeighinBasis {
  readonly layup: LayupPlan | null;
  readonly weight: WeightPlan | null;
  readonly steps: ReadonlyArray<{ readonly id: string; readonly coat: string | null }> | null;
}
