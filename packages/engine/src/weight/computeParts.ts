import type { WeightBase, WeightValues } from "./WeightDrivers";

export interface WeightParts {
  readonly foamKg: number;
  readonly stringerKg: number;
  readonly clothKg: number;
  readonly resinKg: number;
  readonly fittingsKg: number;
}

/**
 * The board by part, in kg: density times volume for foam and stringer, or the weighed blank less its stringer; cloth; cured resin;
 * plastic of boxes and plug less the foam routed out for them, fillers with it.
 */
export function computeParts(base: WeightBase, values: WeightValues): WeightParts {
  const stringerKg = base.stringerVolumeM3 * values.woodDensityKgM3;
  const plasticM3 = base.boxBodiesM3 * values.boxPlasticShare + base.plugBodiesM3 * values.plugPlasticShare;
  return {
    foamKg: base.isWeighed
      ? values.shapedMassKg - stringerKg
      : (values.volumeM3 - base.stringerVolumeM3) * values.foamDensityKgM3,
    stringerKg,
    clothKg: base.clothKg * values.clothShare,
    resinKg: values.laminateKg + values.filmKg + values.sealKg + values.boxResinKg,
    fittingsKg:
      plasticM3 * values.plasticDensityKgM3 - values.pocketsM3 * values.foamDensityKgM3 + base.fillerKg,
  };
}

export function sumParts(parts: WeightParts): number {
  return parts.foamKg + parts.stringerKg + parts.clothKg + parts.resinKg + parts.fittingsKg;
}
