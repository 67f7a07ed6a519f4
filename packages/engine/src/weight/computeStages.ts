import { type Band, computeBand } from "../layup/computeBand";
import type { LayupPlan } from "../layup/LayupPlan";
import { computeParts, sumParts } from "./computeParts";
import { orderCoats } from "./orderCoats";
import type { WeightBase, WeightDrivers } from "./WeightDrivers";
import type { WeightStagePlan } from "./WeightPlan";

type Reckon = (layup: LayupPlan) => { readonly base: WeightBase; readonly drivers: WeightDrivers };

/**
 * What the board weighs as shaped and after each coat, cured: the same sum of parts over the coats, cloth and fittings that are on it by
 * then. A box or plug comes with its coat, and takes the foam of its pocket away.
 */
export function computeStages(
  layup: LayupPlan,
  boxes: Parameters<typeof orderCoats>[1],
  reckon: Reckon,
): WeightStagePlan[] {
  const coats = orderCoats(layup.coats, boxes);
  const after = (id: string, count: number): WeightStagePlan => {
    const laid = coats.slice(0, count);
    const { value, low, high } = sumUp(reckon(takeLaid(layup, new Set(laid.map((coat) => coat.id)))));
    return { id, massKg: value, massLowKg: low, massHighKg: high };
  };
  return [after("blank", 0), ...coats.map(({ id }, i) => after(id, i + 1))];
}

function takeLaid(layup: LayupPlan, laid: ReadonlySet<string>): LayupPlan {
  return {
    ...layup,
    pieces: layup.pieces.filter(({ coat }) => laid.has(coat)),
    coats: layup.coats.filter(({ id }) => laid.has(id)),
    fittings: layup.fittings.filter(({ kind }) => laid.has(kind === "box" ? "boxes" : "leash-plug")),
  };
}

function sumUp({ base, drivers }: ReturnType<Reckon>): Band {
  return computeBand<keyof WeightDrivers>({ ...drivers }, (values) => sumParts(computeParts(base, values)));
}
