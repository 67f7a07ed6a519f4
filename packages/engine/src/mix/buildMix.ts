import { say } from "../foundation/phrase";
import { quoteText } from "../foundation/quoteText";
import { type Finding, finding, type Stage } from "../foundation/stage";
import { standingEntries } from "../foundation/standingEntries";
import type { CoatPlan, LayupPlan } from "../layup/LayupPlan";
import { listResins } from "../materials/listResins";
import { type BuiltCoat, buildMixCoat } from "./buildMixCoat";
import { buildMixResin } from "./buildMixResin";
import { buildShopAir } from "./buildShopAir";
import { checkAir, checkResinInShop } from "./checkAir";
import { checkPoints } from "./checkPoints";
import { checkRecord } from "./checkRecord";
import { checkWhole } from "./checkWhole";
import { computeAirRange } from "./computeGelBand";
import { listModels } from "./listModels";
import { listOwnResins } from "./listOwnResins";
import type { MixInput } from "./MixInput";
import type { MixPlan } from "./MixPlan";
import type { MixSetting } from "./MixSetting";
import type { OutlinePoints } from "./placeCups";
import { makeResinCure, type ResinCure } from "./ResinCure";
import type { ShopAir } from "./ShopAir";

const M3_PER_ML = 1e-6;

interface MixOptions {
  /** From the tail on. */
  readonly outline?: OutlinePoints;
  /** Wall time at which each coat goes on; a coat without goes on in the first working hour that is warm enough. */
  readonly hours?: ReadonlyMap<string, string>;
}

/**
 * Cups, dose and clocks for every coat: how much to mix at once, how much hardener, by when it must lie spread, and when the
 * film can be trimmed, turned, coated, sanded and ridden in this shop's day and night.
 * Method: gel time of the resin's sheet with its band, spreading times and film stages of common practice; the film's clock is
 * moved by what the record says of cups and fingertips.
 * @param options the outline, where the shape is known, and the calendar's hours, where days are planned
 * @returns null with a blocker where the shop's numbers cannot be; null with a note while there is no coat to mix for
 */
export function buildMix(
  board: MixInput,
  layup: LayupPlan | null,
  { outline = [], hours = new Map() }: MixOptions = {},
): Stage<MixPlan> {
  if (layup === null) {
    const says = say`cups, dose and clocks follow once the coats are known`;
    return { value: null, findings: [finding("note", "mix.no-coats", "mix", says)], assumptions: [] };
  }
  const air = buildShopAir(board.shop ?? {});
  if (air.value === null) return { value: null, findings: air.findings, assumptions: air.assumptions };
  const resins = listResins(board.materials);
  const unknown = layup.coats.filter((coat) => !Object.hasOwn(resins, coat.resin));
  if (unknown.length > 0)
    return { value: null, findings: unknown.map(unknownResin), assumptions: air.assumptions };
  const ids = [...new Set(layup.coats.map((coat) => coat.resin))];
  const cures = new Map(ids.map((id) => [id, makeResinCure(resins[id]!, air.value!)]));
  const setting = settingOf(board, air.value, { outline, hours });
  const built = layup.coats.map((coat) => buildMixCoat(coat, cures.get(coat.resin)!, setting));
  const coats = built.map(({ value }) => value);
  const { lowK, highK } = computeAirRange(air.value);
  return {
    value: {
      dewPointK: air.value.dewPointK,
      airLowK: lowK,
      airHighK: highK,
      resins: ids.map((id) => buildMixResin(id, cures.get(id)!)),
      coats,
    },
    findings: [
      ...checkAir(air.value),
      ...ids.flatMap((id) => checkCure(id, cures.get(id)!, built, air.value!)),
      ...built.flatMap(({ findings }) => findings),
      ...checkWhole(coats, air.value, board.materials?.tints?.[board.glass?.tint?.of ?? ""]?.mostShare),
      ...checkRecord(setting.record, coats),
    ],
    assumptions: [
      ...air.assumptions,
      ...listModels([...cures.values()], coats, air.value),
      ...listOwnResins(board.materials, cures),
    ],
  };
}

function settingOf(board: MixInput, air: ShopAir, { outline, hours }: Required<MixOptions>): MixSetting {
  const drops = board.shop?.dropsPerMl;
  return {
    air,
    tint: board.glass?.tint ?? {},
    dropsPerM3: drops === undefined ? null : drops / M3_PER_ML,
    record: standingEntries(board.record ?? []),
    outline,
    hours,
  };
}

function checkCure(id: string, cure: ResinCure, built: readonly BuiltCoat[], air: ShopAir): Finding[] {
  const own = built.filter(({ value }) => value.resin === id);
  const coats = own.map(({ value }) => value);
  return [...checkResinInShop(cure.resin, own, air), ...checkPoints(id, cure, coats)];
}

function unknownResin(coat: CoatPlan): Finding {
  const says = say`no resin ${quoteText(coat.resin)} is known for ${coat.id}`;
  return finding("blocker", "mix.unknown-resin", "glass.resin", says);
}
