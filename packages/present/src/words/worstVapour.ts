import type { Plan } from "@lapline/engine";

type Mix = NonNullable<Plan["mix"]>;
type Vapour = NonNullable<Mix["coats"][number]["vapour"]>;

/** The coat that needs the most fresh air about its gel; null where none gives off styrene. */
export function worstVapour(mix: Mix): { readonly id: string; readonly vapour: Vapour } | null {
  let worst: { readonly id: string; readonly vapour: Vapour } | null = null;
  for (const { id, vapour } of mix.coats) {
    if (vapour === null) continue;
    if (worst === null || rateOf(vapour) > rateOf(worst.vapour)) worst = { id, vapour };
  }
  return worst;
}

const rateOf = ({ styreneKg, overS }: Vapour): number => styreneKg / overS;
