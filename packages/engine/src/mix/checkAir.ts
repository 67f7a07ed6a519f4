import { BLUSH_HUMIDITY, LEAST_OVER_DEW_POINT_K } from "../constants/dewPoint";
import type { PeroxideResin, Resin, TwoPartResin } from "../constants/Resin";
import { COLD_BLANK_K, RISING_AIR } from "../constants/shopDefaults";
import { listPhrases } from "../foundation/listPhrases";
import { type Phrase, say } from "../foundation/phrase";
import { duration, fraction, temperature } from "../foundation/quantity";
import { type Finding, finding } from "../foundation/stage";
import type { BuiltCoat } from "./buildMixCoat";
import { firstColdS } from "./firstColdS";
import type { ShopAir } from "./ShopAir";

const PATH = "shop.temperature";

/** What the shop's air does to the wet board: dew, bubbles out of warming foam. */
export function checkAir(air: ShopAir): Finding[] {
  return [...checkDew(air), ...checkWarming(air)];
}

function checkDew(air: ShopAir): Finding[] {
  const { dewPointK, workingK } = air;
  if (dewPointK === null) return [];
  const nightK = workingK - air.nightColderByK;
  if (workingK - dewPointK < LEAST_OVER_DEW_POINT_K.value) {
    const says = say`the dew point is ${temperature(dewPointK)}, too near the shop's ${temperature(workingK)}: damp foam gives blisters, and epoxy blushes; warm or dry the air first`;
    return [finding("warning", "mix.dew", "shop.humidity", says)];
  }
  if (nightK <= dewPointK) {
    const says = say`the dew point is ${temperature(dewPointK)}, and the night falls to ${temperature(nightK)}: damp foam gives blisters, and epoxy blushes; keep the heat on until it is hard`;
    return [finding("warning", "mix.dew", "shop.humidity", says)];
  }
  const says = say`the dew point is ${temperature(dewPointK)}; the board stays dry above it`;
  return [finding("note", "mix.dew", "shop.humidity", says)];
}

function checkWarming(air: ShopAir): Finding[] {
  if (air.risesByK > RISING_AIR.byK.value) {
    const says = say`the air warms over the ${duration(RISING_AIR.overS.value)} after the start of work: warming foam breathes out and blows pinholes; laminate when it is steady or falls slowly`;
    return [finding("warning", "mix.warming", PATH, says)];
  }
  if (air.nightColderByK >= COLD_BLANK_K.value) {
    const says = say`the blank comes out of a night at ${temperature(air.workingK - air.nightColderByK)}: let it warm through to ${temperature(air.workingK)} before resin goes on, or it breathes out and blows pinholes`;
    return [finding("note", "mix.cold-blank", PATH, says)];
  }
  return [];
}

/** Coats of one resin, judged together: a shop too cold, a night that stops the cure, what the resin itself asks for. */
export function checkResinInShop(resin: Resin, built: readonly BuiltCoat[], air: ShopAir): Finding[] {
  const least = resin.leastCureTemperatureK.value;
  if (resin.kind === "sunlight") return checkSunlight(resin);
  const cold = built.find(({ value }) => value.temperatureK < least)?.value;
  if (cold !== undefined) {
    const warmest = air.endsSoon
      ? say`no working hour of the list is warmer than ${temperature(cold.temperatureK)}`
      : say`the shop is at ${temperature(cold.temperatureK)}`;
    const says = say`${resin.name} does not cure below ${temperature(least)}, and ${warmest}: nothing is credited and no dose is given; warm shop, blank and resin, or choose another resin`;
    return [finding("blocker", "mix.too-cold", PATH, says)];
  }
  return [
    ...checkColdResin(resin, air),
    ...checkNight(resin, built, air),
    ...(resin.kind === "two-part" ? checkBlush(resin, air) : checkPromoter(resin)),
  ];
}

/** Only where the dew point itself is no trouble yet. */
function checkBlush(resin: TwoPartResin, air: ShopAir): Finding[] {
  const { humidity, dewPointK, workingK } = air;
  if (!resin.blushes || humidity === null || dewPointK === null) return [];
  if (humidity <= BLUSH_HUMIDITY.value || workingK - dewPointK < LEAST_OVER_DEW_POINT_K.value) return [];
  const says = say`in air of ${fraction(humidity)} humidity ${resin.name} may blush, a greasy film that the next coat slides on: wash it off with water and a pad and let it dry before you sand or coat`;
  return [finding("warning", "mix.blush", "shop.humidity", says)];
}

function checkPromoter(resin: PeroxideResin): Finding[] {
  if (resin.promoter === "in the resin") return [];
  const says = say`${resin.name} takes its promoter apart: stir it into the resin first and all through, put the bottle away, and only then bring the peroxide; the two meeting bare explode`;
  return [finding("warning", "mix.promoter", "glass.resin", says)];
}

function checkSunlight(resin: Resin): Finding[] {
  const says = say`${resin.name} sets by light, not by the clock: its sheet gives the exposure for the sun of the day; keep cup and board in the dark until it lies as you want it`;
  return [finding("note", "mix.sunlight", "glass.resin", says)];
}

function checkColdResin(resin: Resin, air: ShopAir): Finding[] {
  const least = resin.leastCureTemperatureK.value;
  if (air.resinK === null || air.resinK >= least) return [];
  const says = say`the ${resin.name} itself is at ${temperature(air.resinK)}: warm it in a water bath to ${temperature(air.workingK)} before the hardener goes in, never over a flame`;
  return [finding("warning", "mix.cold-resin", "shop.resinTemperature", says)];
}

function checkNight(resin: Resin, built: readonly BuiltCoat[], air: ShopAir): Finding[] {
  const least = resin.leastCureTemperatureK.value;
  const stalled = built.filter(({ value: { clock, cups }, beginS }) => {
    if (clock === null) return false;
    const coldS = firstColdS(air.pieces, least, beginS + (cups.at(-1)?.mixAtS ?? 0));
    const setS = clock.trimFromHighS ?? clock.flipHighS;
    return coldS !== null && (setS === null || setS > coldS);
  });
  const first = stalled[0] ?? built[0];
  const coldS = first === undefined ? null : firstColdS(air.pieces, least, first.beginS);
  if (first === undefined || coldS === null) return [];
  const falls: Phrase = air.endsSoon
    ? say`${duration(coldS)} after ${first.value.id} goes on the shop falls below ${temperature(least)}, where ${resin.name} stands still`
    : say`${duration(coldS)} after the start of work the shop falls below ${temperature(least)}, where ${resin.name} stands still`;
  if (stalled.length === 0) {
    return [finding("note", "mix.cold-night", PATH, say`${falls}; nothing is credited until it warms again`)];
  }
  const which = listPhrases(
    stalled.map(({ value }) => say`${value.id}`),
    "comma",
  );
  const says = say`${falls}: ${which} may not have set by then; heat on, or an earlier start, or it stays soft until it warms`;
  return [finding("warning", "mix.stalls", PATH, says)];
}
