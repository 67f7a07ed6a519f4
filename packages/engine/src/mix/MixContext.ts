import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import type { MixCoatPlan, MixPlan } from "./MixPlan";
import type { ShopInput } from "./ShopInput";

/** What `why` hands the mix's working: the plan and the board file it came from. */
export interface MixContext {
  readonly plan: { readonly mix: MixPlan | null; readonly layup: LayupPlan | null };
  readonly board: { readonly shop?: ShopInput };
}

export function findCoat(plan: MixContext["plan"], id: string | undefined): MixCoatPlan | undefined {
  return plan.mix?.coats.find((coat) => coat.id === id);
}

export function findLayupCoat(plan: MixContext["plan"], id: string | undefined): CoatPlan | undefined {
  return plan.layup?.coats.find((coat) => coat.id === id);
}
