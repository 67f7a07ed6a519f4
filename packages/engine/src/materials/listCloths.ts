import { CLOTHS, type Cloth, ROLL_WIDTH_M, WARP_SHARES, WEAVE_SPREAD_SHARE } from "../constants/cloths";
import { FIBRES } from "../constants/fibres";
import type { Sourced } from "../constants/Sourced";
import type { MaterialsInput } from "./MaterialsInput";
import type { OwnClothInput } from "./OwnClothInput";

/** Every cloth that this board file can name: the generic ones, and over them the builder's own. */
export function listCloths(materials: MaterialsInput | undefined): Readonly<Record<string, Cloth>> {
  const own = Object.entries(materials?.cloths ?? {});
  if (own.length === 0) return CLOTHS;
  return { ...CLOTHS, ...Object.fromEntries(own.map(([id, input]) => [id, makeOwnCloth(id, input)])) };
}

function makeOwnCloth(id: string, input: OwnClothInput): Cloth {
  const weave = input.weave ?? "plain";
  const spread = WEAVE_SPREAD_SHARE.value * input.arealMassKgM2;
  const own = (value: number | undefined, generic: Sourced): Sourced =>
    value === undefined ? generic : { value, source: "own-sheet" };
  return {
    id,
    name: input.name ?? id,
    fibre: FIBRES[input.fibre],
    weave,
    warpShare: own(input.warpShare, WARP_SHARES[weave]),
    arealMassKgM2: {
      value: input.arealMassKgM2,
      low: input.arealMassKgM2 - spread,
      high: input.arealMassKgM2 + spread,
      source: "own-sheet",
    },
    rollWidthM: own(input.rollWidthM, ROLL_WIDTH_M),
  };
}
