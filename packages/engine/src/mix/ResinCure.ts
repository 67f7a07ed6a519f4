import type { Resin } from "../constants/Resin";
import { buildCureCurve, type CureCurve } from "./buildCureCurve";
import { fitGelModel } from "./fitGelModel";
import type { GelModel } from "./GelModel";
import type { ShopAir } from "./ShopAir";

/** One resin in this shop: how its cups gel, and how far its films come with time. */
export interface ResinCure {
  readonly resin: Resin;
  /** Null for a resin that only light sets, and where its points are no use. */
  readonly model: GelModel | null;
  readonly curve: CureCurve | null;
}

export function makeResinCure(resin: Resin, air: ShopAir): ResinCure {
  const model = fitGelModel(resin);
  if (model === null) return { resin, model, curve: null };
  const { reference } = model;
  const gelS = (airK: number) => model.gelS({ ...reference, temperatureK: airK });
  const curve = buildCureCurve(air.pieces, gelS, resin.leastCureTemperatureK.value);
  return { resin, model, curve };
}
