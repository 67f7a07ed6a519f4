import { MOLAR_VOLUME_M3 } from "../constants/styrene";

/**
 * Fresh air that keeps a vapour at a limit: `Q = V_mol × ER / (M × C) × K`, the mass rate over the molar mass, as vapour of 20 °C, over
 * the limit's share of air, times how badly the room mixes. The same as 24.04 SG ER 1e6 K / (MW C) in m³/h with litres an hour.
 * Source: ACGIH's form, in two teaching notes.
 * @param vapour mass rate (kg/s), molar mass (kg/mol), limit (ppm of the air's volume) and mixing factor K
 * @returns m³/s
 */
export function computeDilutionM3S(vapour: {
  readonly rateKgS: number;
  readonly molarMassKgMol: number;
  readonly limitPpm: number;
  readonly mixing: number;
}): number {
  const { rateKgS, molarMassKgMol, limitPpm, mixing } = vapour;
  return (MOLAR_VOLUME_M3.value * rateKgS * mixing * 1e6) / (molarMassKgMol * limitPpm);
}
