import type { Resin } from "../constants/Resin";
import { say } from "../foundation/phrase";
import { temperature } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { GelModel } from "./GelModel";
import type { MixCoatPlan } from "./MixPlan";
import type { ShopAir } from "./ShopAir";

/** Marks gel times that are carried further from the resin's points than they bear, in the cup or on the board. */
export function checkPoints(
  { resin, model }: { readonly resin: Resin; readonly model: GelModel | null },
  coats: readonly MixCoatPlan[],
  air: ShopAir,
): Finding[] {
  if (model === null) return [];
  const far = [air.resinK, air.workingK].filter((temperatureK) =>
    coats.some(({ hardenerRatio: dose, cups: [cup] }) => {
      if (dose === null || cup === undefined) return false;
      return model.isFar({ temperatureK, dose, massKg: cup.mixedMassKg });
    }),
  );
  const farthest = far.at(0);
  if (farthest === undefined) return [];
  const says = say`the times of ${resin.name} at ${temperature(farthest)} are carried far beyond its sheet's points: time a small cup in the shop before you trust them`;
  return [finding("warning", "mix.beyond-sheet", "mix.coats", says)];
}
