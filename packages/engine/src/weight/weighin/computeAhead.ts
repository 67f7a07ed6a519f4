import { OWN_RATIO_SPREAD_SHARE } from "../../constants/handling";
import type { CoatPlan, LayupPlan } from "../../layup/LayupPlan";
import { bandOfDifference, type Difference, isOfCoatsAlone } from "./Difference";
import type { AheadPlan } from "./WeighinsPlan";

/**
 * The resin for coats still to come, by the last weigh-in of their kind alone: what stays on is scaled as weighed, what tools and cups
 * keep stays as planned. One coat to the next scatters besides, as a maker's own ratio does.
 */
export function computeAhead(
  layup: LayupPlan,
  differences: readonly Difference[],
  laid: readonly CoatPlan[],
): AheadPlan[] {
  const tells = differences.filter((difference) => tellsOfKind(difference));
  return layup.coats
    .filter((coat) => coat.kind !== "box" && !laid.includes(coat))
    .flatMap((coat) => {
      const by = tells.findLast(({ coats }) => coats[0]?.kind === coat.kind);
      if (by === undefined) return [];
      const share = OWN_RATIO_SPREAD_SHARE.value;
      const scatter = { value: 1, low: 1 - share, high: 1 + share };
      const band = bandOfDifference(
        by,
        ({ keptKg, extraShare }) =>
          coat.resinMassKg + coat.keptMassKg * ((keptKg / by.plannedKeptKg) * extraShare - 1),
        scatter,
      );
      return [
        {
          id: coat.id,
          by: by.to.id,
          plannedMassKg: coat.resinMassKg,
          resinMassKg: band.value,
          resinMassLowKg: band.low,
          resinMassHighKg: band.high,
        },
      ];
    });
}

/** Coats of one kind only, with resin kept. */
function tellsOfKind(difference: Difference): boolean {
  const { coats, from, to, clothKg } = difference;
  const kinds = new Set(coats.map(({ kind }) => kind));
  return (
    isOfCoatsAlone(difference) && kinds.size === 1 && !kinds.has("box") && to.massKg - from.massKg > clothKg
  );
}
