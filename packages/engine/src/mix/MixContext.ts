import type { Resin } from "../constants/Resin";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import { findResin } from "../materials/listResins";
import type { MixInput } from "./MixInput";
import type { MixCoatPlan, MixPlan } from "./MixPlan";

/** What `why` hands the mix's working: the plan and the board file it came from. */
export interface MixContext {
  readonly plan: { readonly mix: MixPlan | null; readonly layup: LayupPlan | null };
  readonly board: MixInput;
}

/** The resin of a coat, generic or the builder's own. */
export function findCoatResin({ plan, board }: MixContext, id: string | undefined): Resin | undefined {
  return findResin(board.materials, findCoat(plan, id)?.resin);
}

export function findCoat(plan: MixContext["plan"], id: string | undefined): MixCoatPlan | undefined {
  return plan.mix?.coats.find((coat) => coat.id === id);
}

export function findLayupCoat(plan: MixContext["plan"], id: string | undefined): CoatPlan | undefined {
  return plan.layup?.coats.find((coat) => coat.id === id);
}
