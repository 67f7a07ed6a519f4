import type { GelPoint, Resin } from "../constants/Resin";
import { type Phrase, say } from "../foundation/phrase";
import { duration, fraction, mass, temperature } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import { findOddPoints } from "./findOddPoints";
import type { FarIn, GelModel } from "./GelModel";
import type { MixCoatPlan } from "./MixPlan";
import type { ResinCure } from "./ResinCure";

/** What is wrong with a resin's gel points, or with how far they are carried, in the cup or on the board. */
export function checkPoints(
  id: string,
  { resin, model }: ResinCure,
  coats: readonly MixCoatPlan[],
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
  return [...contradiction, ...checkFar(resin, model, coats)];
}

/** The first coat whose cup, or whose film, lies far from the sheet's points, and in what. */
function checkFar(resin: Resin, model: GelModel, coats: readonly MixCoatPlan[]): Finding[] {
  for (const coat of coats) {
    const [cup] = coat.cups;
    if (coat.hardenerRatio === null || cup === undefined) continue;
    const state = { dose: coat.hardenerRatio, massKg: cup.mixedMassKg };
    for (const temperatureK of [coat.resinTemperatureK, coat.temperatureK]) {
      const far = model.farIn({ ...state, temperatureK });
      if (far !== null) return [sayFar(resin, { ...state, temperatureK, far })];
    }
  }
  return [];
}

function sayFar(
  { name }: Resin,
  cup: {
    readonly far: FarIn;
    readonly temperatureK: number;
    readonly dose: number;
    readonly massKg: number;
  },
): Finding {
  const value = {
    temperature: temperature(cup.temperatureK),
    dose: fraction(cup.dose),
    mass: mass(cup.massKg),
  };
  const where =
    cup.far === "mass"
      ? say`in a cup of ${value.mass}`
      : cup.far === "dose"
        ? say`at ${value.dose} of hardener`
        : say`at a temperature of ${value.temperature}`;
  const says = say`the times of ${name} ${where} are carried far beyond its sheet's points: time a small cup in the shop before you trust them`;
  return finding("warning", "mix.beyond-sheet", "mix.coats", says);
}

function sayOdd(slow: GelPoint, other: GelPoint): Phrase {
  return say`${sayPoint(slow)}, and ${sayPoint(other)}; read both again`;
}

function sayPoint({ temperatureK, dose, gelS }: GelPoint): Phrase {
  return say`${temperature(temperatureK)} and ${fraction(dose)} gel in ${duration(gelS)}`;
}
