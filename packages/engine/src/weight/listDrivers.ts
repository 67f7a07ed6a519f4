import { WEAVE_SPREAD_SHARE } from "../constants/cloths";
import { BOX_SOLID_SHARE, FITTING_DENSITY_KG_M3, PLUG_SOLID_SHARE } from "../constants/fittings";
import type { Foam } from "../constants/foams";
import type { Sourced } from "../constants/Sourced";
import { SCALE_SPREAD_SHARE } from "../constants/scale";
import type { Band } from "../layup/computeBand";
import type { CoatKind, LayupPlan } from "../layup/LayupPlan";
import type { BoardShape } from "../shape/BoardShape";
import type { Stringer } from "./resolveStringer";
import type { WeightBase, WeightDrivers } from "./WeightDrivers";

/**
 * What the weight hangs on. Coats of one kind come from one hand, so their ranges add; different kinds are taken as independent.
 */
export function listDrivers(given: {
  readonly foam: Foam;
  readonly stringer: Stringer;
  readonly shapedMassKg: number | undefined;
  readonly shape: BoardShape;
  readonly layup: LayupPlan;
}): WeightDrivers {
  const { foam, stringer, shape, layup } = given;
  const { volumeM3, volumeLowM3, volumeHighM3 } = shape.plan;
  const shapedKg = given.shapedMassKg ?? 0;
  return {
    volumeM3: { value: volumeM3, low: volumeLowM3, high: volumeHighM3 },
    foamDensityKgM3: foam.densityKgM3,
    woodDensityKgM3: stringer.woodDensityKgM3,
    shapedMassKg: spread(shapedKg, SCALE_SPREAD_SHARE),
    clothShare: spread(1, WEAVE_SPREAD_SHARE),
    laminateKg: sumKept(layup, ["laminate"]),
    filmKg: sumKept(layup, ["fill", "gloss"]),
    sealKg: sumKept(layup, ["seal"]),
    boxResinKg: sumKept(layup, ["box"]),
    boxPlasticShare: BOX_SOLID_SHARE,
    plugPlasticShare: PLUG_SOLID_SHARE,
    plasticDensityKgM3: FITTING_DENSITY_KG_M3,
    pocketsM3: {
      value: sum(layup.fittings.map((fitting) => fitting.pocketVolumeM3)),
      low: sum(layup.fittings.map((fitting) => fitting.pocketVolumeLowM3)),
      high: sum(layup.fittings.map((fitting) => fitting.pocketVolumeHighM3)),
    },
  };
}

export function listBase(given: {
  readonly stringerVolumeM3: number;
  readonly isWeighed: boolean;
  readonly layup: LayupPlan;
}): WeightBase {
  const { layup, stringerVolumeM3, isWeighed } = given;
  const bodiesM3 = (kind: "box" | "plug") =>
    sum(layup.fittings.filter((fitting) => fitting.kind === kind).map((fitting) => fitting.bodyVolumeM3));
  return {
    isWeighed,
    stringerVolumeM3,
    fillerKg: sum(layup.coats.map(({ filler }) => filler?.keptMassKg ?? 0)),
    clothKg: sum(layup.pieces.map((piece) => piece.clothMassKg)),
    boxBodiesM3: bodiesM3("box"),
    plugBodiesM3: bodiesM3("plug"),
  };
}

function sumKept(layup: LayupPlan, kinds: readonly CoatKind[]): Band {
  const coats = layup.coats.filter((coat) => kinds.includes(coat.kind));
  return {
    value: sum(coats.map((coat) => coat.keptMassKg)),
    low: sum(coats.map((coat) => coat.keptMassLowKg)),
    high: sum(coats.map((coat) => coat.keptMassHighKg)),
  };
}

function spread(value: number, { value: share }: Sourced): Band {
  return { value, low: (1 - share) * value, high: (1 + share) * value };
}

function sum(list: readonly number[]): number {
  return list.reduce((total, item) => total + item, 0);
}
