import { RESINS } from "../constants/resins";
import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import { assume } from "../sources/assume";
import { buildMixCoat } from "./buildMixCoat";
import { buildShopAir } from "./buildShopAir";
import { checkAir, checkResinInShop } from "./checkAir";
import { checkPoints } from "./checkPoints";
import type { MixCoatPlan, MixPlan } from "./MixPlan";
import { makeResinCure } from "./ResinCure";
import type { ShopAir } from "./ShopAir";
import type { ShopInput } from "./ShopInput";

/**
 * Cups, dose and clocks for every coat: how much to mix at once, how much hardener, by when it must lie spread, and when the
 * film can be trimmed, turned, coated, sanded and ridden in this shop's day and night.
 * Method: gel time of the resin's sheet with its band, spreading times and film stages of common practice.
 * @returns null with a blocker where the shop's numbers cannot be; null with a note while there is no coat to mix for
 */
export function buildMix(shop: ShopInput | undefined, layup: LayupPlan | null): Stage<MixPlan> {
  if (layup === null) {
    const says = say`cups, dose and clocks follow once the coats are known`;
    return { value: null, findings: [finding("note", "mix.no-coats", "mix", says)], assumptions: [] };
  }
  const air = buildShopAir(shop ?? {});
  if (air.value === null) return { value: null, findings: air.findings, assumptions: [] };
  const unknown = layup.coats.filter((coat) => !Object.hasOwn(RESINS, coat.resin));
  if (unknown.length > 0) return { value: null, findings: unknown.map(unknownResin), assumptions: [] };
  const built = buildCoats(layup.coats, air.value);
  return {
    value: { dewPointK: air.value.dewPointK, coats: built.coats },
    findings: [...checkAir(air.value), ...built.findings],
    assumptions: [...air.assumptions, ...listModels(built.coats)],
  };
}

function buildCoats(coats: readonly CoatPlan[], air: ShopAir) {
  const ids = [...new Set(coats.map((coat) => coat.resin))];
  const resins = new Map(ids.map((id) => [id, makeResinCure(RESINS[id]!, air)]));
  const built = coats.map((coat) => buildMixCoat(coat, resins.get(coat.resin)!, air));
  const values = built.map(({ value }) => value);
  const byResin = [...resins].flatMap(([id, fitted]) => {
    const own = values.filter((coat) => coat.resin === id);
    return [...checkResinInShop(fitted.resin, own, air), ...checkPoints(fitted, own, air)];
  });
  return { coats: values, findings: [...byResin, ...built.flatMap(({ findings }) => findings)] };
}

function unknownResin(coat: CoatPlan): Finding {
  const says = say`no resin ${quoteText(coat.resin)} is known for ${coat.id}`;
  return finding("blocker", "mix.unknown-resin", "glass.resin", says);
}

/** What every cup and clock of these coats rests on. */
function listModels(coats: readonly MixCoatPlan[]): Assumption[] {
  const kinds = new Set(coats.map((coat) => RESINS[coat.resin]!.kind));
  const taken = [
    assume(
      "mix.coats",
      say`spreading times by kind of coat, mass and practice`,
      "nobody's own times are known yet; they decide how many cups, and how strong a dose",
      "common-practice",
    ),
    assume(
      "mix.coats",
      say`film stages as multiples of the film's gel time`,
      "a sheet times a cup, not a film: a fingertip on the board is better than any of these times",
      "common-practice",
    ),
    assume(
      "mix.coats",
      say`the next cup is mixed when the one before lies spread`,
      "one cup at a time stands open",
      "convention",
    ),
    assume(
      "mix.coats",
      say`each coat goes on at the start of the working hours; its film's times count from the last cup`,
      "no calendar is planned here",
      "convention",
    ),
  ];
  if (kinds.has("peroxide")) taken.push(...listPeroxide());
  if (kinds.has("two-part")) taken.push(...listTwoPart());
  return taken;
}

function listPeroxide(): Assumption[] {
  return [
    assume(
      "glass.resin",
      say`gel times of one published polyester sheet, with the spread between sheets in the band`,
      "another polyester may take half or twice the time: your own sheet, or one cup timed in your shop, narrows it",
      "gel-table-115nt",
    ),
    assume(
      "mix.coats",
      say`the strongest dose in the range that leaves the time to spread`,
      "the film then sets as soon as the work allows",
      "convention",
    ),
    assume(
      "mix.coats",
      say`wax solution in fill and gloss coats only, on top of the mixed mass`,
      "wax lets the top dry sandable, and keeps the next coat from bonding",
      "wax-supplier",
    ),
  ];
}

function listTwoPart(): Assumption[] {
  return [
    assume(
      "glass.resin",
      say`ratio and pot life of a middling laminating epoxy`,
      "only the sheet of your own resin gives its ratio: weigh by that, and never turn it to change the pace",
      "epoxy-memory",
    ),
  ];
}
