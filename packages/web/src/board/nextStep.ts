import type { Plan } from "@lapline/engine";

type Step = NonNullable<Plan["steps"]>[number];

/** The first in time of what is not done; where no days are known, the first in the order of work. Null where nothing is left or known. */
export function nextStep({ steps, calendar }: Pick<Plan, "steps" | "calendar">): Step | null {
  const open = (steps ?? []).filter(({ done }) => !done);
  const first = calendar?.find(
    ({ step, startsAt }) => startsAt !== null && open.some(({ id }) => id === step),
  );
  return open.find(({ id }) => id === first?.step) ?? open[0] ?? null;
}
