import type { Working, WorkingInput } from "../foundation/stage";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { RollsInput } from "../materials/RollsInput";
import type { ShapePlan } from "../shape/ShapePlan";
import type { FittingsInput } from "./FittingsInput";
import type { BlankInput, GlassInput } from "./GlassInput";
import type { LayupPlan } from "./LayupPlan";

/** What `why` hands the layup's working: the plan and the board file it came from. */
export interface LayupContext {
  readonly plan: { readonly layup: LayupPlan | null; readonly shape: ShapePlan | null };
  readonly board: {
    readonly glass?: GlassInput;
    readonly blank?: BlankInput;
    readonly fins?: FittingsInput;
    readonly materials?: MaterialsInput;
    readonly shop?: { readonly rolls?: RollsInput };
  };
}

/** Inputs that need the layup; none where it was not built. */
export function fromLayup(
  list: (layup: LayupPlan, ids: readonly string[], context: LayupContext) => readonly WorkingInput[],
): Working<LayupContext>["inputs"] {
  return (context, ids) => (context.plan.layup === null ? [] : list(context.plan.layup, ids, context));
}

/** The element that an id names; a path that names none has no inputs to show. */
export function byId<T extends { readonly id: string }>(
  elements: readonly T[],
  id: string | undefined,
  show: (element: T) => readonly WorkingInput[],
): readonly WorkingInput[] {
  const element = elements.find((candidate) => candidate.id === id);
  return element === undefined ? [] : show(element);
}
