import type { GelPoint } from "../constants/Resin";
import { type Phrase, say } from "../foundation/phrase";
import { duration, fraction, temperature } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { findOddPoints } from "./findOddPoints";
import type { MixCoatPlan } from "./MixPlan";
import type { ResinCure } from "./ResinCure";
import type { ShopAir } from "./ShopAir";

/** What is wrong with a resin's gel points, or with how far they are carried, in the cup or on the board. */
export function checkPoints(
  id: string,
  { resin, model }: ResinCure,
  { coats, air }: { readonly coats: readonly MixCoatPlan[]; readonly air: ShopAir },
): Finding[] {
  if (resin.kind === "sunlight") return [];
  const path = `materials.resins.${id}.gel`;
  const points = resin.kind === "peroxide" ? resin.gel.points : [];
  const [odd] = findOddPoints(points);
  if (model === null) {
    const example = odd === undefined ? say`read them off its sheet again` : sayOdd(odd.slow, odd.other);
    const says = say`the gel points of ${resin.name} contradict the law that warmer or stronger gels sooner, so no time can be given: ${example}`;
    return [finding("blocker", "mix.gel-points", path, says)];
  }
  const contradiction =
    odd === undefined
      ? []
      : [
          finding(
            "warning",
            "mix.gel-odd",
            path,
            say`two gel points of ${resin.name} contradict each other: ${sayOdd(odd.slow, odd.other)}`,
          ),
        ];
  const far = [air.resinK, air.workingK].find((temperatureK) =>
    coats.some(({ hardenerRatio: dose, cups: [cup] }) => {
      if (dose === null || cup === undefined) return false;
      return model.isFar({ temperatureK, dose, massKg: cup.mixedMassKg });
    }),
  );
  if (far === undefined) return contradiction;
  const says = say`the times of ${resin.name} at ${temperature(far)} are carried far beyond its sheet's points: time a small cup in the shop before you trust them`;
  return [...contradiction, finding("warning", "mix.beyond-sheet", "mix.coats", says)];
}

function sayOdd(slow: GelPoint, other: GelPoint): Phrase {
  return say`${sayPoint(slow)}, and ${sayPoint(other)}; read both again`;
}

function sayPoint({ temperatureK, dose, gelS }: GelPoint): Phrase {
  return say`${temperature(temperatureK)} and ${fraction(dose)} gel in ${duration(gelS)}`;
}
