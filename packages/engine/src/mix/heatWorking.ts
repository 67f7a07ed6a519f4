import { CUP_HEAT_TRANSFER, CURE_HEAT } from "../constants/cupHeat";
import { formatDecimal } from "../foundation/formatDecimal";
import { say } from "../foundation/phrase";
import { density, mass, temperature } from "../foundation/quantity";
import type { WorkingInput, WorkingTable } from "../foundation/stage";
import { bandedWorking } from "./bandedWorking";
import { findCoat, findCoatResin, type MixContext } from "./MixContext";

function heat(context: MixContext, id: string | undefined): WorkingInput[] {
  const resin = findCoatResin(context, id);
  if (resin === undefined || resin.kind === "sunlight") return [];
  const { heatJKg, capacityJKgK } = CURE_HEAT[resin.kind];
  return [
    {
      name: "heat of cure H, kJ/kg",
      value: say`${formatDecimal(heatJKg.value / 1000, 0)} (${formatDecimal(heatJKg.low / 1000, 0)} to ${formatDecimal(heatJKg.high / 1000, 0)})`,
    },
    {
      name: "heat capacity c, J/(kg K)",
      value: say`${formatDecimal(capacityJKgK.value, 0)} (${formatDecimal(capacityJKgK.low, 0)} to ${formatDecimal(capacityJKgK.high, 0)})`,
    },
  ];
}

/** How the bound and the cooling time of a cup left standing come about. */
export const heatWorking: WorkingTable<MixContext> = {
  ...bandedWorking("mix.coats[].heat.bound", "K", {
    words:
      "a cup left standing cannot get hotter than that by its own heat: all of it kept in; a bound and no forecast",
    formula: "T_resin + H / c",
    sources: ["polyester-memory", "epoxy-memory"],
    inputs: (context, [id]) => {
      const coat = findCoat(context.plan, id);
      return [
        ...(coat === undefined ? [] : [{ name: "resin T", value: temperature(coat.resinTemperatureK) }]),
        ...heat(context, id),
      ];
    },
  }),
  ...bandedWorking("mix.coats[].heat.cooling", "S", {
    words:
      "time in which such a cup loses all but a third of what it is warmer than the shop; longer than the gel, and heat cannot leave as fast as it comes",
    formula: "τ = ρ c V / (h A), a cylinder as tall as wide, cooled by wall and top; ends with h's range",
    sources: ["still-air-memory", "polyester-memory", "epoxy-memory", "convention"],
    inputs: (context, [id]) => {
      const cup = findCoat(context.plan, id)?.cups[0];
      const resin = findCoatResin(context, id);
      const { value, low, high } = CUP_HEAT_TRANSFER;
      return [
        ...(cup === undefined ? [] : [{ name: "mixed in the cup", value: mass(cup.mixedMassKg) }]),
        ...(resin === undefined ? [] : [{ name: "liquid ρ", value: density(resin.liquidDensityKgM3.value) }]),
        { name: "heat transfer h, W/(m² K)", value: say`${value} (${low} to ${high})` },
        ...heat(context, id),
      ];
    },
  }),
};
