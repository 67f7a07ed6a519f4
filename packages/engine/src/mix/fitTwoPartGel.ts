import { GAS_CONSTANT } from "../constants/gasConstant";
import { GEL_BAND } from "../constants/gelBand";
import type { TwoPartResin } from "../constants/Resin";
import { STUDENT_T_95 } from "../constants/studentT";
import { combineLogHalves, LEAST_LOG_HALF, logHalfOf, sdOf } from "./bands";
import { arrheniusFactor } from "./computeActivationEnergy";
import type { GelModel } from "./GelModel";

/**
 * How long a cup of two-part resin stays open, from the pot life that its sheet gives for one mass and one temperature:
 * `t = t_ref (m/m_ref)^-p exp[(E/R)(1/T - 1/T_ref)]`; the ratio is fixed and no dose is turned.
 * The band is the sheet's range, the range of p and E carried to this cup, and the thermometer's; never under 20 %.
 * Source: Arrhenius law; p from memory of sheets, hence its wide range.
 */
export function fitTwoPartGel(resin: TwoPartResin): GelModel {
  const { potLife, activationEnergyJMol: energy } = resin;
  const power = potLife.massExponent;
  return {
    exponent: 0,
    activationEnergyJMol: energy.value,
    reference: {
      temperatureK: potLife.temperatureK,
      massKg: potLife.massKg,
      dose: resin.ratio.value,
      gelS: potLife.durationS.value,
    },
    gelS: (cup) =>
      potLife.durationS.value *
      (cup.massKg / potLife.massKg) ** -power.value *
      arrheniusFactor(energy.value, cup.temperatureK, potLife.temperatureK),
    logHalfBand: (cup) =>
      Math.max(
        LEAST_LOG_HALF,
        combineLogHalves([
          logHalfOf(potLife.durationS),
          STUDENT_T_95.normal * sdOf(power) * Math.log(cup.massKg / potLife.massKg),
          (STUDENT_T_95.normal * sdOf(energy) * (1 / cup.temperatureK - 1 / potLife.temperatureK)) /
            GAS_CONSTANT.value,
          (STUDENT_T_95.normal * GEL_BAND.temperatureSdK.value * energy.value) /
            (GAS_CONSTANT.value * cup.temperatureK ** 2),
        ]),
      ),
    farIn: (cup) => {
      if (Math.abs(cup.temperatureK - potLife.temperatureK) > GEL_BAND.farTemperatureK.value)
        return "temperature";
      const far = GEL_BAND.farMassRatio.value;
      const ratio = cup.massKg / potLife.massKg;
      return ratio > far || ratio < 1 / far ? "mass" : null;
    },
  };
}
