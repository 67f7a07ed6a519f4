import { SHOP_DEFAULTS } from "../constants/shopDefaults";
import type { Crew } from "./computeSpreadS";
import type { ShopInput } from "./ShopInput";

/** Who is at the board, as given or as taken; `buildShopAir` tells what was taken. */
export function crewOf(shop: ShopInput | undefined): Crew {
  return {
    people: shop?.people ?? SHOP_DEFAULTS.people.value,
    experience: shop?.experience ?? SHOP_DEFAULTS.experience,
  };
}
