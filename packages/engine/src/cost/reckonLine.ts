import type { PriceInput } from "../materials/PriceInput";
import type { CostLinePlan } from "./CostPlan";
import type { Need } from "./listNeeds";

/** A share of a pack that is no reason to open another. */
const SLACK = 1e-9;

/** What is bought in whole packs, and what is left of them, in the need's own measure. */
interface Reckoned {
  readonly pack: number | null;
  readonly packs: number | null;
  readonly bought: number;
  readonly left: number;
  readonly cost: number;
  readonly outlay: number;
}

/**
 * One material's line: cost of what the board takes, and the whole packs to buy. Cloth without a pack is cut to length. Null amounts where
 * there is no price, or its pack is measured otherwise than the material.
 */
export function reckonLine(need: Need, price: PriceInput | undefined): CostLinePlan {
  const reckoned = price === undefined ? null : reckon(need, price);
  return {
    id: need.id,
    kind: need.kind,
    price: reckoned === null ? null : (price?.price ?? null),
    packs: reckoned?.packs ?? null,
    cost: reckoned?.cost ?? null,
    outlay: reckoned?.outlay ?? null,
    ...tellAmounts(need, reckoned),
  };
}

function reckon(need: Need, { price, ...pack }: PriceInput): Reckoned | null {
  const taken = need.onBoard + need.wasted;
  const size = sizeOfPack(need, pack);
  if (size === null && need.measure !== "length") return null;
  if (size === null) {
    const cost = price * taken;
    return { pack: null, packs: null, bought: taken, left: 0, cost, outlay: cost };
  }
  const packs = Math.ceil(taken / size - SLACK);
  const bought = packs * size;
  return {
    pack: size,
    packs,
    bought,
    left: bought - taken,
    cost: (price * taken) / size,
    outlay: price * packs,
  };
}

/** A liquid sold by volume counts by its density. */
function sizeOfPack({ measure, densityKgM3 }: Need, pack: Omit<PriceInput, "price">): number | null {
  const { packKg, packM, packM3, pieces } = pack;
  if (measure === "pieces") return pieces ?? 1;
  if (measure === "length") return packM ?? null;
  if (measure === "volume") return packM3 ?? null;
  if (packKg !== undefined) return packKg;
  return packM3 === undefined || densityKgM3 === undefined ? null : packM3 * densityKgM3;
}

function tellAmounts({ measure, onBoard, wasted }: Need, reckoned: Reckoned | null) {
  const [pack, bought, left] = [reckoned?.pack ?? null, reckoned?.bought ?? null, reckoned?.left ?? null];
  const none = { mass: null, length: null, volume: null, pieces: null };
  switch (measure) {
    case "mass":
      return {
        ...none,
        mass: { onBoardKg: onBoard, wastedKg: wasted, packKg: pack, boughtKg: bought, leftKg: left },
      };
    case "length":
      return {
        ...none,
        length: { onBoardM: onBoard, wastedM: wasted, packM: pack, boughtM: bought, leftM: left },
      };
    case "volume":
      return {
        ...none,
        volume: { onBoardM3: onBoard, wastedM3: wasted, packM3: pack, boughtM3: bought, leftM3: left },
      };
    case "pieces":
      return {
        ...none,
        pieces: {
          onBoardCount: onBoard,
          wastedCount: wasted,
          packCount: pack,
          boughtCount: bought,
          leftCount: left,
        },
      };
  }
}
