import type { Plan } from "@lapline/engine";

/**
 * The plan's cautions of some of its steps, each once, and what holds for every step last. Whether a step is done makes no
 * difference: paper is used again.
 */
export function cautionsAt(plan: Plan, stepIds: readonly string[]): readonly string[] {
  const steps = plan.steps ?? [];
  const always = steps[0]?.cautions.filter((caution) =>
    steps.every((step) => step.cautions.includes(caution)),
  );
  const here = steps.filter(({ id }) => stepIds.includes(id)).flatMap(({ cautions }) => cautions);
  const own = new Set(here.filter((caution) => !always?.includes(caution)));
  return [...own, ...(always ?? [])];
}
