import { computeExposures } from "./computeExposures";
import { findOddPoints } from "./findOddPoints";
import type { MixResinPlan } from "./MixPlan";
import type { ResinCure } from "./ResinCure";

/** What a resin's cups and films rest on: its points, the fit through them, or its exposures. */
export function buildMixResin(id: string, { resin, model }: ResinCure): MixResinPlan {
  const points = resin.kind === "peroxide" ? resin.gel.points : [];
  const odd = new Set(findOddPoints(points).flatMap(({ slow, other }) => [slow, other]));
  return {
    id,
    name: resin.name,
    kind: resin.kind,
    exponent: model?.exponent ?? null,
    activationEnergyJMol: model?.activationEnergyJMol ?? null,
    points: points.map((point) => ({
      temperatureK: point.temperatureK,
      doseRatio: point.dose,
      gelS: point.gelS,
      fittedS: model?.gelS({ ...model.reference, ...point }) ?? null,
      isOdd: odd.has(point),
    })),
    exposures: resin.kind === "sunlight" ? computeExposures(resin) : [],
  };
}
