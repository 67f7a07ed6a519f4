import { MIXING_FACTOR, MOLAR_VOLUME_M3, STYRENE, STYRENE_EMISSION } from "../constants/styrene";
import { duration, fraction, mass } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { findCoat, findCoatResin, type MixContext } from "./MixContext";

const VAPOUR = "mix.coats[].vapour";

function released(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = findCoatResin(context, id);
  const cups = findCoat(context.plan, id)?.cups ?? [];
  return [
    { name: "resin of all cups", value: mass(cups.reduce((sum, cup) => sum + cup.baseMassKg, 0)) },
    ...(resin === undefined ? [] : [{ name: "styrene in it", value: fraction(resin.styreneShare.value) }]),
    { name: "factor", value: String(STYRENE_EMISSION.factor.value) },
    { name: "power", value: String(STYRENE_EMISSION.power.value) },
  ];
}

/** How the vapour of a coat and the fresh air against it come about; an estimate, not a compliance calculation. */
export const vapourWorking: WorkingTable<MixContext> = {
  [`${VAPOUR}.styreneKg`]: {
    words: "styrene that leaves the open coat; an estimate, not a compliance calculation",
    formula: "resin × 0.014 (percent of styrene)^2.275 / 1000",
    sources: ["emission-table"],
    inputs: (context, [id]) => released(context, id),
  },
  [`${VAPOUR}.overS`]: {
    words:
      "nearly all of it leaves between the first cup's hardener and the film's gel: then the air need peaks",
    formula: "last cup's hardener + gel of the film",
    sources: ["common-practice", "arrhenius"],
    inputs: (context, [id]) => {
      const last = findCoat(context.plan, id)?.cups.at(-1);
      return last === undefined ? [] : [{ name: "last cup's hardener in", value: duration(last.mixAtS) }];
    },
  },
  [`${VAPOUR}.needs[].limitPpm`]: {
    words: "a published limit for styrene in air, parts per million; limits differ by country and change",
    formula: "as published",
    sources: ["osha-z2", "niosh-guide", "limits-memory"],
    inputs: (context, [id, limit]) => {
      const need = findCoat(context.plan, id)?.vapour?.needs.find((each) => each.id === limit);
      return need === undefined ? [] : [{ name: "whose", value: need.name }];
    },
  },
  [`${VAPOUR}.needs[].freshAirM3S`]: {
    words:
      "fresh air that keeps the shop at that limit over those hours, in a room that mixes badly; not a compliance calculation: the safety data sheet, local codes and licensed practice decide",
    formula: "Q = V_mol × ER × K / (M × C), the same as 24.04 SG ER 1e6 K / (MW C)",
    sources: ["dilution-formula", "niosh-guide"],
    inputs: (context, [id, limit]) => {
      const vapour = findCoat(context.plan, id)?.vapour;
      const need = vapour?.needs.find((each) => each.id === limit);
      if (vapour == null || need === undefined) return [];
      return [
        { name: "styrene", value: mass(vapour.styreneKg) },
        { name: "over", value: duration(vapour.overS) },
        { name: "limit C, ppm", value: String(need.limitPpm) },
        { name: "mixing factor K", value: String(MIXING_FACTOR.value) },
        { name: "molar mass M, kg/mol", value: String(STYRENE.molarMassKgMol.value) },
        { name: "molar volume, m³/mol", value: String(MOLAR_VOLUME_M3.value) },
      ];
    },
  },
};
