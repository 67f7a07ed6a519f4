import { FOAM_DENSITY_EXPONENT, RESIN_MODULUS_PA, WRINKLING_K } from "../constants/elasticity";
import { say } from "../foundation/phrase";
import { count, mass } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { byId, fromLayup, type LayupContext } from "./LayupContext";
import type { LayupPlan, SchedulePlan } from "./LayupPlan";

const wrinkling = (skin: "deck" | "bottom"): WorkingTable<LayupContext>[string] => ({
  words: say`load along the board at which the ${skin}'s skin folds into waves, over that of the own schedule; dents, voids and a skin that is not flat are in k alone, which falls out of the ratio`,
  formula: "N = k (E_skin E_foam G_foam)^⅓ t; ratio = N / N_own",
  sources: ["hoff-wrinkling", "kaw-laminate", "stiffness-memory"],
  inputs: scheduleInputs((schedule) => [
    { name: "k", value: count(WRINKLING_K.value) },
    { name: say`layers of the ${skin}`, value: schedule[skin].join(" + ") || "none" },
  ]),
});

/** How the schedules beside the board's own are reckoned. */
export const comparedWorking: WorkingTable<LayupContext> = {
  "layup.compared[].skinMassKg": {
    words:
      "cloth of the full layers and the resin it holds once cured; patches and poured coats are the same in all",
    formula: "Σ areal mass × (face + lap × rail line) × (1 + r)",
    sources: ["mass-balance", "resin-glass-chart"],
    inputs: scheduleInputs((schedule, layup) => [
      { name: "layers", value: [...schedule.bottom, ...schedule.deck].join(", ") },
      { name: "ratio r", value: count(layup.resinRatio) },
      { name: "skin", value: mass(schedule.skinMassKg) },
    ]),
  },
  "layup.compared[].stiffnessRatio": {
    words:
      "how stiff the board is in bending where it is thickest, over the own schedule: skins, laps, patches there, foam and stringer; shear, twist and the rest of the length left out",
    formula: "EI = Σ E t Δs (z − z̄)² + foam + stringer; ratio = EI / EI_own",
    sources: ["kaw-laminate", "stiffness-memory", "xps-bending-test"],
    inputs: scheduleInputs((schedule, layup) => [
      { name: "bottom", value: schedule.bottom.join(" + ") || "none" },
      { name: "deck", value: schedule.deck.join(" + ") || "none" },
      { name: "ratio r", value: count(layup.resinRatio) },
      { name: "resin's modulus, GPa", value: count(RESIN_MODULUS_PA.value / 1e9) },
      { name: "foam's stiffness goes with density to the power", value: count(FOAM_DENSITY_EXPONENT.value) },
    ]),
  },
  "layup.compared[].deckWrinklingRatio": wrinkling("deck"),
  "layup.compared[].bottomWrinklingRatio": wrinkling("bottom"),
};

function scheduleInputs(list: (schedule: SchedulePlan, layup: LayupPlan) => readonly WorkingInput[]) {
  return fromLayup((layup, [id]) => byId(layup.compared, id, (schedule) => list(schedule, layup)));
}
