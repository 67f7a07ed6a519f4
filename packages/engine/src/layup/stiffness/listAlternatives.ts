import type { Cloth } from "../../constants/cloths";
import type { SchedulePlan } from "../LayupPlan";
import type { FaceSchedules } from "../Schedule";

type AlternativeId = SchedulePlan["id"];

interface Alternative {
  readonly id: AlternativeId;
  readonly faces: FaceSchedules;
}

/**
 * The board's own schedule and its neighbours: one deck layer less and more, each bottom layer a step lighter and heavier, and the same cloths
 * of stronger glass. One that cannot be woven from the cloths there are is left out.
 */
export function listAlternatives(
  own: FaceSchedules,
  cloths: Readonly<Record<string, Cloth>>,
): readonly Alternative[] {
  const { deck, bottom } = own;
  const withFace = (
    face: "deck" | "bottom",
    layers: readonly Cloth[],
    lapsM = own[face].lapsM,
  ): FaceSchedules => ({
    ...own,
    [face]: { ...own[face], layers, lapsM },
  });
  const lighter = bottom.layers.map((cloth) => stepOf(cloth, cloths, -1));
  const heavier = bottom.layers.map((cloth) => stepOf(cloth, cloths, 1));
  const stronger = (layers: readonly Cloth[]) => layers.map((cloth) => strongerOf(cloth, cloths));
  const alternatives: ReadonlyArray<readonly [AlternativeId, FaceSchedules | null]> = [
    ["own", own],
    [
      "lighter-deck",
      deck.layers.length > 1 ? withFace("deck", deck.layers.slice(1), deck.lapsM.slice(1)) : null,
    ],
    ["lighter-bottom", isWhole(lighter) ? withFace("bottom", lighter) : null],
    [
      "heavier-deck",
      deck.layers.length > 0
        ? withFace("deck", [deck.layers[0]!, ...deck.layers], [deck.lapsM[0]!, ...deck.lapsM])
        : null,
    ],
    ["heavier-bottom", isWhole(heavier) ? withFace("bottom", heavier) : null],
    ["stronger-glass", strengthen(own, stronger(deck.layers), stronger(bottom.layers))],
  ];
  return alternatives.flatMap(([id, faces]) => (faces === null ? [] : [{ id, faces }]));
}

function isWhole(layers: ReadonlyArray<Cloth | null>): layers is readonly Cloth[] {
  return layers.length > 0 && layers.every((cloth) => cloth !== null);
}

function strengthen(
  own: FaceSchedules,
  deck: ReadonlyArray<Cloth | null>,
  bottom: ReadonlyArray<Cloth | null>,
): FaceSchedules | null {
  if (!isWhole(deck) || !isWhole(bottom)) return null;
  return { deck: { ...own.deck, layers: deck }, bottom: { ...own.bottom, layers: bottom } };
}

/** The next lighter or heavier cloth of the same fibre and weave. */
function stepOf(cloth: Cloth, cloths: Readonly<Record<string, Cloth>>, way: 1 | -1): Cloth | null {
  const ahead = Object.values(cloths).filter(
    (other) =>
      other.fibre.id === cloth.fibre.id &&
      other.weave === cloth.weave &&
      way * (other.arealMassKgM2.value - cloth.arealMassKgM2.value) > 0,
  );
  return ahead.sort((a, b) => way * (a.arealMassKgM2.value - b.arealMassKgM2.value))[0] ?? null;
}

/** Stronger glass of the same weight and weave. */
function strongerOf(cloth: Cloth, cloths: Readonly<Record<string, Cloth>>): Cloth | null {
  if (cloth.fibre.id !== "e-glass") return null;
  const alike = Object.values(cloths).find(
    (other) =>
      other.fibre.id === "s-glass" &&
      other.weave === cloth.weave &&
      Math.abs(other.arealMassKgM2.value / cloth.arealMassKgM2.value - 1) < ALIKE,
  );
  return alike ?? null;
}

/** Two weights within this share of each other are sold by the same ounces. */
const ALIKE = 0.05;
