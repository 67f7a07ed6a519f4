import type { LayupPlan } from "../layup/LayupPlan";
import { listResins } from "../materials/listResins";
import { buildShopAir } from "./buildShopAir";
import { computeFilmClock } from "./computeFilmClock";
import type { MixInput } from "./MixInput";
import type { FilmClock, MixPlan } from "./MixPlan";
import { makeResinCure, type ResinCure } from "./ResinCure";

/** Films of a plan's coats begun at any time. All times in seconds from the start of the first working day. */
export interface CureForecast {
  /** Nought as wall time on the scale of `parseWallTimeS`; null where no day is given. */
  readonly zeroWallS: number | null;
  /** The shop's air; null where nothing is known of it. */
  airK(atS: number): number | null;
  /** Whether the air is warm enough for this coat's resin; false too where the air is not known. */
  isWarmEnough(coatId: string, atS: number): boolean;
  /**
   * The film's clock where the coat's first cup is mixed at that time, in seconds from the last cup's hardener on; null where
   * the coat has no cup, or sets by light.
   */
  clockOf(coatId: string, beginsAtS: number): FilmClock | null;
}

/**
 * Reads off one sum of the cure how each coat of a plan would come on if it were begun at another time than the plan's.
 * Dose and cups are the plan's own. Fast: to be asked as often as a calendar likes.
 * @returns null where the shop's numbers cannot be
 */
export function buildCureForecast(
  input: Pick<MixInput, "shop" | "materials">,
  layup: LayupPlan,
  mix: MixPlan,
): CureForecast | null {
  const air = buildShopAir(input.shop ?? {}).value;
  if (air === null) return null;
  const resins = listResins(input.materials);
  const cures = new Map<string, ResinCure>();
  for (const { resin } of mix.coats) {
    if (Object.hasOwn(resins, resin) && !cures.has(resin))
      cures.set(resin, makeResinCure(resins[resin]!, air));
  }
  const coats = new Map(mix.coats.map((coat) => [coat.id, coat]));
  const kinds = new Map(layup.coats.map(({ id, kind }) => [id, kind]));
  const airK = (atS: number) => air.pieces.find(({ fromS, toS }) => fromS <= atS && atS < toS)?.airK ?? null;
  return {
    zeroWallS: air.zeroWallS,
    airK,
    isWarmEnough(coatId, atS) {
      const leastK = cures.get(coats.get(coatId)?.resin ?? "")?.resin.leastCureTemperatureK.value;
      const nowK = airK(atS);
      return leastK !== undefined && nowK !== null && nowK >= leastK;
    },
    clockOf(coatId, beginsAtS) {
      const [coat, kind] = [coats.get(coatId), kinds.get(coatId)];
      const cure = cures.get(coat?.resin ?? "");
      if (coat === undefined || kind === undefined || cure === undefined) return null;
      const { resin, model, curve } = cure;
      const dose = coat.hardenerRatio;
      if (resin.kind === "sunlight" || model === null || curve === null || dose === null) return null;
      const firstCupEarlierS = coat.cups.at(-1)?.mixAtS ?? 0;
      const startS = beginsAtS + firstCupEarlierS;
      return computeFilmClock({ kind, resin, model, curve, dose, startS, firstCupEarlierS });
    },
  };
}
