import { SCALE_SPREAD_SHARE } from "../constants/scale";
import { SEA_WATER_KG_M3 } from "../constants/seaWater";
import { say } from "../foundation/phrase";
import { density, fraction, mass } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { computeBand } from "../layup/computeBand";
import type { LayupPlan } from "../layup/LayupPlan";
import { findFoamIn } from "../materials/listBlanks";
import type { BoardShape } from "../shape/BoardShape";
import { assume } from "../sources/assume";
import { computeFloat } from "./computeFloat";
import { computeParts, sumParts, type WeightParts } from "./computeParts";
import { computeProfileArea } from "./computeProfileArea";
import { computeStages } from "./computeStages";
import { listBase, listDrivers } from "./listDrivers";
import { resolveStringer } from "./resolveStringer";
import type { WeightBoard } from "./WeightBoard";
import type { WeightBase, WeightDrivers, WeightValues } from "./WeightDrivers";
import type { WeightPlan } from "./WeightPlan";

/**
 * What the board will weigh, part by part and after each coat, and whether it floats its rider, with a band of about 90 % from what its
 * inputs spread. Without fins, wax and leash, and before sanding takes its share. The weighed blank is used where there is one,
 * else volume times density.
 * @returns null with a note where shape or glass is not planned yet; null with a blocker where stringer or scale make no sense
 */
export function buildWeight(
  board: WeightBoard,
  shape: BoardShape | null,
  layup: LayupPlan | null,
): Stage<WeightPlan> {
  const { blank, materials } = board;
  const foam = blank === undefined ? null : findFoamIn(materials, blank.foam);
  if (blank === undefined || foam === null || shape === null) {
    return waitFor(shape === null ? "the shape" : layup === null ? "the glass" : "the blank's foam");
  }
  const stringer = resolveStringer(blank, materials);
  if (stringer.value === null) return { ...stringer, value: null };
  const stringerVolumeM3 = stringer.value.thicknessM * computeProfileArea(shape);
  const stringerKg = stringerVolumeM3 * stringer.value.woodDensityKgM3.value;
  const scale = checkScale(blank.shapedMassKg, stringerKg);
  if (scale.length > 0) return { value: null, findings: scale, assumptions: [] };
  if (layup === null) return waitFor("the glass");
  const isWeighed = blank.shapedMassKg !== undefined;
  const given = { foam, stringer: stringer.value, shapedMassKg: blank.shapedMassKg, shape };
  const reckon = (laid: LayupPlan) => ({
    base: listBase({ stringerVolumeM3, isWeighed, layup: laid }),
    drivers: listDrivers({ ...given, layup: laid }),
  });
  const { base, drivers } = reckon(layup);
  return {
    value: {
      ...composeParts(base, drivers),
      stages: computeStages(layup, board.fins?.boxes, reckon),
      float: computeFloat(base, drivers, board.order?.riderMassKg),
    },
    findings: stringer.findings,
    assumptions: [...stringer.assumptions, ...listLimits(layup, isWeighed)],
  };
}

function waitFor(missing: string): Stage<WeightPlan> {
  const waiting = finding("note", "weight.waits", "weight", say`the weight waits for ${missing}`);
  return { value: null, findings: [waiting], assumptions: [] };
}

/** The weighed blank against its stringer; `compareByWeight` holds it against the shape. */
function checkScale(shapedMassKg: number | undefined, stringerKg: number): Finding[] {
  if (shapedMassKg === undefined) return [];
  if (shapedMassKg > stringerKg && Number.isFinite(shapedMassKg)) return [];
  const says = say`the shaped blank must weigh more than its stringer, about ${mass(stringerKg)}`;
  return [finding("blocker", "weight.shaped-mass", "blank.shapedMass", says)];
}

function composeParts(base: WeightBase, drivers: WeightDrivers): Omit<WeightPlan, "stages" | "float"> {
  const bandOf = (pick: (parts: WeightParts) => number) =>
    computeBand<keyof WeightDrivers>({ ...drivers }, (values: WeightValues) =>
      pick(computeParts(base, values)),
    );
  const foam = bandOf((parts) => parts.foamKg);
  const stringer = bandOf((parts) => parts.stringerKg);
  const cloth = bandOf((parts) => parts.clothKg);
  const resin = bandOf((parts) => parts.resinKg);
  const fittings = bandOf((parts) => parts.fittingsKg);
  const finished = bandOf(sumParts);
  return {
    foamKg: foam.value,
    foamLowKg: foam.low,
    foamHighKg: foam.high,
    stringerKg: stringer.value,
    stringerLowKg: stringer.low,
    stringerHighKg: stringer.high,
    clothKg: cloth.value,
    clothLowKg: cloth.low,
    clothHighKg: cloth.high,
    resinKg: resin.value,
    resinLowKg: resin.low,
    resinHighKg: resin.high,
    fittingsKg: fittings.value,
    fittingsLowKg: fittings.low,
    fittingsHighKg: fittings.high,
    finishedKg: finished.value,
    finishedLowKg: finished.low,
    finishedHighKg: finished.high,
    foamBy: base.isWeighed ? "scale" : "volume",
    stringerVolumeM3: base.stringerVolumeM3,
  };
}

function listLimits(layup: LayupPlan, isWeighed: boolean): Assumption[] {
  const sanding = assume(
    "weight.resinKg",
    say`what sanding takes off is left in`,
    "how much goes off hangs on the hand; a sanded board comes out lighter by part of its fill coat",
    "common-practice",
  );
  const scale = assume(
    "weight.foamKg",
    say`the weighed blank less its stringer`,
    say`the scale is nearer than volume times density; it may be ${fraction(SCALE_SPREAD_SHARE.value)} off`,
    "common-practice",
  );
  const fittings = assume(
    "weight.fittingsKg",
    say`about half of a box's block is plastic`,
    "boxes are described by footprint and depth only",
    "common-practice",
  );
  const float = assume(
    "weight.float",
    say`sea water of ${density(SEA_WATER_KG_M3.value)}, the volume of the shaped blank`,
    "left out: the skin's own thickness, fins, wax and leash, the wetsuit's mass and lift, the part of the rider that is under water, and the lift of a moving board",
    SEA_WATER_KG_M3.source,
  );
  return [sanding, float, ...(isWeighed ? [scale] : []), ...(layup.fittings.length > 0 ? [fittings] : [])];
}
