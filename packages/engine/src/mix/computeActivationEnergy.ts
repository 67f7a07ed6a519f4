import { GAS_CONSTANT } from "../constants/gasConstant";
import type { GelPoint } from "../constants/Resin";

/**
 * What each kelvin is worth, from two gel times at the same dose: `E = R ln(t1/t2) / (1/T1 - 1/T2)`.
 * Source: the Arrhenius law.
 * @returns E in J/mol
 * @throws RangeError where both points are at one temperature
 */
export function computeActivationEnergy(
  a: Pick<GelPoint, "temperatureK" | "gelS">,
  b: Pick<GelPoint, "temperatureK" | "gelS">,
): number {
  if (a.temperatureK === b.temperatureK) throw new RangeError("both gel points are at one temperature");
  return (GAS_CONSTANT.value * Math.log(a.gelS / b.gelS)) / (1 / a.temperatureK - 1 / b.temperatureK);
}

/** By how much a time grows from `referenceK` to `temperatureK`: `exp[(E/R)(1/T - 1/T_ref)]`. */
export function arrheniusFactor(
  activationEnergyJMol: number,
  temperatureK: number,
  referenceK: number,
): number {
  return Math.exp((activationEnergyJMol / GAS_CONSTANT.value) * (1 / temperatureK - 1 / referenceK));
}
