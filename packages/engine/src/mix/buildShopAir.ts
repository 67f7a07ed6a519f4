import { RESIN_RANGE_K, SHOP_DEFAULTS } from "../constants/shopDefaults";
import { say } from "../foundation/phrase";
import { fraction, temperature } from "../foundation/quantity";
import { type Assumption, type Finding, finding, type Stage } from "../foundation/stage";
import { assume } from "../sources/assume";
import { computeDewPointK } from "./computeDewPointK";
import { crewOf } from "./crewOf";
import { readAirCurve } from "./readAirCurve";
import type { AirCurve, ShopAir } from "./ShopAir";
import type { ShopInput } from "./ShopInput";

/** What the mixing needs of the shop; whatever is not given is taken and told. */
export function buildShopAir(shop: ShopInput): Stage<ShopAir> {
  const curve = readAirCurve(shop);
  const findings: Finding[] = [...curve.findings, ...checkShop(shop)];
  if (curve.value === null || findings.length > 0)
    return { value: null, findings, assumptions: curve.assumptions };
  const { workingK } = curve.value;
  const value: ShopAir = {
    ...curve.value,
    resinK: shop.resinTemperatureK ?? null,
    humidity: shop.humidity ?? null,
    dewPointK: shop.humidity === undefined ? null : computeDewPointK(workingK, shop.humidity),
    crew: crewOf(shop),
  };
  return { value, findings, assumptions: [...curve.assumptions, ...listTaken(shop, curve.value)] };
}

function listTaken(shop: ShopInput, { workingK, endsSoon }: AirCurve): Assumption[] {
  const taken: Assumption[] = [];
  if (shop.resinTemperatureK === undefined) {
    const value = endsSoon ? say`as warm as the air when its coat goes on` : say`${temperature(workingK)}`;
    const why = "no resin temperature is given; the resin is taken to have stood in the shop";
    taken.push(assume("shop.resinTemperature", value, why, "convention"));
  }
  if (shop.people === undefined) {
    const why = "nobody says how many hands there are; one pair is the careful choice";
    taken.push(assume("shop.people", say`${SHOP_DEFAULTS.people.value}`, why, "convention"));
  }
  if (shop.experience === undefined) {
    const why = "nobody says how practised the hands are; a first board needs the longest working time";
    taken.push(assume("shop.experience", say`${SHOP_DEFAULTS.experience}`, why, "convention"));
  }
  return taken;
}

function checkShop(shop: ShopInput): Finding[] {
  const { humidity, resinTemperatureK: resinK, people } = shop;
  const found: Finding[] = [];
  if (humidity !== undefined && !(humidity > 0 && humidity <= 1)) {
    const says = Number.isFinite(humidity)
      ? say`humidity lies above 0 and up to 100 %; ${fraction(humidity)} was read`
      : say`humidity lies above 0 and up to 100 %`;
    found.push(finding("blocker", "mix.humidity", "shop.humidity", says));
  }
  if (resinK !== undefined && !(resinK >= RESIN_RANGE_K.least && resinK <= RESIN_RANGE_K.most)) {
    const range = say`resin is used between ${temperature(RESIN_RANGE_K.least)} and ${temperature(RESIN_RANGE_K.most)}`;
    const says = Number.isFinite(resinK) ? say`${range}; ${temperature(resinK)} was read` : range;
    found.push(finding("blocker", "mix.resin-temperature", "shop.resinTemperature", says));
  }
  if (people !== undefined && !(Number.isInteger(people) && people >= 1)) {
    found.push(
      finding("blocker", "mix.people", "shop.people", say`there must be at least one whole person to glass`),
    );
  }
  return found;
}
