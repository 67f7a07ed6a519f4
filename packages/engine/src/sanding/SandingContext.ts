import type { Working, WorkingInput } from "../foundation/stage";
import type { LayupPlan } from "../layup/LayupPlan";
import type { SandingBoard } from "./SandingBoard";
import type { SandingPlan } from "./SandingPlan";

/** What `why` hands the sanding's working: the plan and the board file it came from. */
export interface SandingContext {
  readonly plan: { readonly sanding: SandingPlan | null; readonly layup: LayupPlan | null };
  readonly board: SandingBoard;
}

/** Inputs that need the film budget; none where it was not built. */
export function fromSanding(
  list: (sanding: SandingPlan, ids: readonly string[], context: SandingContext) => readonly WorkingInput[],
): Working<SandingContext>["inputs"] {
  return (context, ids) => (context.plan.sanding === null ? [] : list(context.plan.sanding, ids, context));
}
