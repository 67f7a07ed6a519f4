import { MAGNUS } from "../constants/dewPoint";
import { celsiusFromKelvin, kelvinFromCelsius } from "../foundation/units";

/**
 * The temperature at which the shop's damp settles as dew on a colder board:
 * `γ = ln(h) + aT/(b + T)`, `T_dew = bγ/(a - γ)` with T in °C, a 17.625, b 243.04 °C.
 * Source: Alduchov and Eskridge 1996, for -40 to 50 °C.
 * @param airK the air's temperature, K
 * @param humidity relative, a fraction above 0 and up to 1
 * @returns K
 */
export function computeDewPointK(airK: number, humidity: number): number {
  const airC = celsiusFromKelvin(airK);
  const gamma = Math.log(humidity) + (MAGNUS.a * airC) / (MAGNUS.bC + airC);
  return kelvinFromCelsius((MAGNUS.bC * gamma) / (MAGNUS.a - gamma));
}
