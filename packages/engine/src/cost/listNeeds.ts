import { findResin } from "../materials/listResins";
import type { CostBasis, CostBoard } from "./CostInput";
import type { CostKind } from "./CostPlan";

/** How a material is measured. */
export type Measure = "mass" | "length" | "volume" | "pieces";

/** One material that this board takes, in SI: kg, m, m³ or how many. */
export interface Need {
  readonly id: string;
  readonly kind: CostKind;
  readonly measure: Measure;
  readonly onBoard: number;
  readonly wasted: number;
  /** Of a liquid that may be sold by volume, kg/m³. */
  readonly densityKgM3?: number;
}

/**
 * Everything the plan takes: the blank, cloth by the cut plan, base and hardener of every coat with what stays in cups and tools, wax and
 * tint of the cups, boxes and plug, and what the builder's own prices say is used besides.
 */
export function listNeeds(board: CostBoard, basis: CostBasis): Need[] {
  return [
    ...(board.blank === undefined ? [] : [one(board.blank.foam, "blank", 1)]),
    ...listCloth(basis),
    ...listResin(board, basis),
    ...listAdded(board, basis),
    ...listFiller(basis),
    ...listFittings(basis),
    ...listOwn(board),
  ];
}

function one(id: string, kind: CostKind, count: number): Need {
  return { id, kind, measure: "pieces", onBoard: count, wasted: 0 };
}

function listCloth({ cutplan }: CostBasis): Need[] {
  const cuts = [...(cutplan?.rolls ?? []), ...(cutplan?.repairs ?? [])];
  return [...new Set(cuts.map(({ cloth }) => cloth))].map((id): Need => {
    const own = cuts.filter(({ cloth }) => cloth === id);
    const onBoard = own.reduce((sumM, { lengthM, usedRatio }) => sumM + lengthM * usedRatio, 0);
    const wasted = own.reduce((sumM, { lengthM, usedRatio }) => sumM + lengthM * (1 - usedRatio), 0);
    return { id, kind: "cloth", measure: "length", onBoard, wasted };
  });
}

/** Base and hardener by the coat's dose; where no dose is known all of it counts as base. */
function listResin({ materials }: CostBoard, { layup, mix }: CostBasis): Need[] {
  const ids = [...new Set((layup?.coats ?? []).map(({ resin }) => resin))];
  return ids.flatMap((id): Need[] => {
    const resin = findResin(materials, id);
    const base = { onBoard: 0, wasted: 0 };
    const hardener = { onBoard: 0, wasted: 0 };
    for (const coat of layup?.coats ?? []) {
      if (coat.resin !== id) continue;
      const ratio = mix?.coats.find((each) => each.id === coat.id)?.hardenerRatio ?? 0;
      const [keptKg, lostKg] = [coat.keptMassKg, coat.resinMassKg - coat.keptMassKg];
      base.onBoard += keptKg / (1 + ratio);
      base.wasted += lostKg / (1 + ratio);
      hardener.onBoard += (keptKg * ratio) / (1 + ratio);
      hardener.wasted += (lostKg * ratio) / (1 + ratio);
    }
    const liquid: Need = {
      id,
      kind: "resin",
      measure: "mass",
      ...base,
      ...(resin === undefined ? {} : { densityKgM3: resin.liquidDensityKgM3.value }),
    };
    if (resin === undefined || resin.kind === "sunlight" || hardener.onBoard === 0) return [liquid];
    const densityKgM3 = resin.hardenerDensityKgM3.value;
    return [liquid, { id: `${id}-hardener`, kind: "hardener", measure: "mass", ...hardener, densityKgM3 }];
  });
}

/** Wax and tint go with the share of the mix that stays on the board. */
function listAdded({ glass }: CostBoard, { layup, mix }: CostBasis): Need[] {
  const wax = { onBoard: 0, wasted: 0 };
  const tint = { onBoard: 0, wasted: 0 };
  for (const { id, cups } of mix?.coats ?? []) {
    const coat = layup?.coats.find((each) => each.id === id);
    const kept = coat === undefined ? 1 : coat.keptMassKg / coat.resinMassKg;
    for (const { waxVolumeM3, tintMassKg } of cups) {
      wax.onBoard += kept * waxVolumeM3;
      wax.wasted += (1 - kept) * waxVolumeM3;
      tint.onBoard += kept * tintMassKg;
      tint.wasted += (1 - kept) * tintMassKg;
    }
  }
  const needs: Need[] = [
    { id: "wax", kind: "wax", measure: "volume", ...wax },
    { id: glass?.tint?.of ?? "tint", kind: "tint", measure: "mass", ...tint },
  ];
  return needs.filter(({ onBoard }) => onBoard > 0);
}

function listFiller({ layup }: CostBasis): Need[] {
  const used = (layup?.coats ?? []).flatMap(({ filler }) => (filler === null ? [] : [filler]));
  return [...new Set(used.map(({ id }) => id))].map((id): Need => {
    const own = used.filter((filler) => filler.id === id);
    const onBoard = own.reduce((sumKg, { keptMassKg }) => sumKg + keptMassKg, 0);
    const wasted = own.reduce((sumKg, { massKg, keptMassKg }) => sumKg + massKg - keptMassKg, 0);
    return { id, kind: "filler", measure: "mass", onBoard, wasted };
  });
}

function listFittings({ layup }: CostBasis): Need[] {
  const fittings = layup?.fittings ?? [];
  const count = (of: (fitting: (typeof fittings)[number]) => boolean) => fittings.filter(of).length;
  return [
    one(
      "box",
      "box",
      count(({ id, kind }) => kind === "box" && id !== "centre"),
    ),
    one(
      "box-centre",
      "box",
      count(({ id, kind }) => kind === "box" && id === "centre"),
    ),
    one(
      "leash-plug",
      "plug",
      count(({ kind }) => kind === "plug"),
    ),
  ].filter(({ onBoard }) => onBoard > 0);
}

function listOwn({ shop }: CostBoard): Need[] {
  return Object.entries(shop?.prices ?? {}).flatMap(([id, { use }]) =>
    use === undefined ? [] : [one(id, "own", use)],
  );
}
