import { SCALE_SPREAD_SHARE } from "../constants/scale";
import { say } from "../foundation/phrase";
import { fraction, mass } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { computeBand } from "../layup/computeBand";
import type { BlankBoard } from "../layup/GlassInput";
import type { LayupPlan } from "../layup/LayupPlan";
import { findFoamIn } from "../materials/listBlanks";
import type { BoardShape } from "../shape/BoardShape";
import { assume } from "../sources/assume";
import { computeParts, sumParts, type WeightParts } from "./computeParts";
import { computeProfileArea } from "./computeProfileArea";
import { listBase, listDrivers } from "./listDrivers";
import { resolveStringer } from "./resolveStringer";
import type { WeightBase, WeightDrivers, WeightValues } from "./WeightDrivers";
import type { WeightPlan } from "./WeightPlan";

/**
 * What the board will weigh, part by part, with a band of about 90 % from what its inputs spread. Without fins, wax and leash, and
 * before sanding takes its share. The weighed blank is used where there is one, else volume times density.
 * @returns null with a note where shape or glass is not planned yet; null with a blocker where stringer or scale make no sense
 */
export function buildWeight(
  { blank, materials }: BlankBoard,
  shape: BoardShape | null,
  layup: LayupPlan | null,
): Stage<WeightPlan> {
  const foam = blank === undefined ? null : findFoamIn(materials, blank.foam);
  if (blank === undefined || foam === null || shape === null || layup === null) {
    const missing = shape === null ? "the shape" : layup === null ? "the glass" : "the blank's foam";
    const waiting = finding("note", "weight.waits", "weight", say`the weight waits for ${missing}`);
    return { value: null, findings: [waiting], assumptions: [] };
  }
  const stringer = resolveStringer(blank, materials);
  if (stringer.value === null) return { ...stringer, value: null };
  const stringerVolumeM3 = stringer.value.thicknessM * computeProfileArea(shape);
  const stringerKg = stringerVolumeM3 * stringer.value.woodDensityKgM3.value;
  const scale = checkScale(blank.shapedMassKg, stringerKg);
  if (scale.length > 0) return { value: null, findings: scale, assumptions: [] };
  const isWeighed = blank.shapedMassKg !== undefined;
  const base = listBase({ stringerVolumeM3, isWeighed, layup });
  const drivers = listDrivers({
    foam,
    stringer: stringer.value,
    shapedMassKg: blank.shapedMassKg,
    shape,
    layup,
  });
  return {
    value: composePlan(base, drivers),
    findings: stringer.findings,
    assumptions: [...stringer.assumptions, ...listLimits(layup, isWeighed)],
  };
}

/** The weighed blank against its stringer; `compareByWeight` holds it against the shape. */
function checkScale(shapedMassKg: number | undefined, stringerKg: number): Finding[] {
  if (shapedMassKg === undefined) return [];
  if (shapedMassKg > stringerKg && Number.isFinite(shapedMassKg)) return [];
  const says = say`the shaped blank must weigh more than its stringer, about ${mass(stringerKg)}`;
  return [finding("blocker", "weight.shaped-mass", "blank.shapedMass", says)];
}

function composePlan(base: WeightBase, drivers: WeightDrivers): WeightPlan {
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
    "the sanding plan is not built yet; a sanded board comes out lighter by part of its fill coat",
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
  return [sanding, ...(isWeighed ? [scale] : []), ...(layup.fittings.length > 0 ? [fittings] : [])];
}
