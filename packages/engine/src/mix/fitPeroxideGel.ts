import { GAS_CONSTANT } from "../constants/gasConstant";
import { GEL_BAND, GEL_TABLE_CUP_KG } from "../constants/gelBand";
import type { GelPoint, PeroxideResin } from "../constants/Resin";
import type { Sourced } from "../constants/Sourced";
import { STUDENT_T_95, studentT95 } from "../constants/studentT";
import { combineLogHalves, LEAST_LOG_HALF, sdOf } from "./bands";
import { fitLeastSquares, type LinearFit } from "./fitLeastSquares";
import type { CupState, FarIn, GelModel } from "./GelModel";

/** What the fit needs of a resin: its own points, and what its kind does where they are too few. */
export type GelPoints = Pick<PeroxideResin, "gel" | "doseExponent" | "activationEnergyJMol">;

/** From so many points on, exponent and energy are fitted; below, the kind's own are taken with their wide range. */
const LEAST_POINTS_TO_FIT = 3;

/**
 * How long a cup of peroxide-cured resin stays open, from the lines of its data sheet:
 * `t = t_ref (c/c_ref)^-n exp[(E/R)(1/T - 1/T_ref)]`, least squares in ln(t).
 * With three points or more n and E are fitted; what they do not settle (all at one dose, or at one temperature) and all
 * with fewer points come from the resin's kind, with its range in the band. The band (90 %) is the fit's own for one more
 * cup, by Student's t, with the spread of thermometer, scale and of the sheets among themselves; never under 20 %.
 * Source: Arrhenius law; handbook of this project for the model.
 * @param resin points in kelvin, dose as a fraction by mass, seconds
 * @returns null where there is no point, or where the points contradict it: warmer or stronger and yet slower
 */
export function fitPeroxideGel(resin: GelPoints): GelModel | null {
  const { points } = resin.gel;
  if (points.length === 0) return null;
  const middle = middleOf(points);
  const terms = termsOf(resin, middle);
  const solved = solve(points, terms);
  const [exponent, activationEnergyJMol] = solved.slopes as [number, number];
  if (exponent < 0 || activationEnergyJMol < 0) return null;
  const gelS = (cup: CupState) =>
    Math.exp(solved.level + terms.reduce((sum, term, i) => sum + term.column(cup) * solved.slopes[i]!, 0));
  return {
    exponent,
    activationEnergyJMol,
    reference: { ...middle, gelS: Math.exp(solved.level) },
    gelS,
    logHalfBand: (cup) => {
      const fromDefaults = terms.flatMap((term, i) =>
        solved.fitted.includes(i) ? [] : [STUDENT_T_95.normal * sdOf(term.byDefault) * term.column(cup)],
      );
      const perKelvin = activationEnergyJMol / (GAS_CONSTANT.value * cup.temperatureK ** 2);
      return Math.max(
        LEAST_LOG_HALF,
        combineLogHalves([
          solved.logHalf(cup),
          ...fromDefaults,
          STUDENT_T_95.normal * resin.gel.betweenSheetsLogSd.value,
          STUDENT_T_95.normal * exponent * GEL_BAND.doseSdShare.value,
          STUDENT_T_95.normal * perKelvin * GEL_BAND.temperatureSdK.value,
        ]),
      );
    },
    farIn: (cup) => farFrom(points, cup),
  };
}

interface Term {
  readonly column: (at: Pick<CupState, "temperatureK" | "dose">) => number;
  readonly byDefault: Sourced;
}

/** The dose's term, then the temperature's; both nought in the middle of the points. */
function termsOf(resin: GelPoints, middle: CupState): readonly Term[] {
  return [
    { column: (at) => Math.log(middle.dose / at.dose), byDefault: resin.doseExponent },
    {
      column: (at) => (1 / at.temperatureK - 1 / middle.temperatureK) / GAS_CONSTANT.value,
      byDefault: resin.activationEnergyJMol,
    },
  ];
}

/** Means of ln(dose) and of 1/T. The mass is not in a gel table, and it has no term. */
function middleOf(points: readonly GelPoint[]): CupState {
  const mean = (of: (point: GelPoint) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  return {
    dose: Math.exp(mean((point) => Math.log(point.dose))),
    temperatureK: 1 / mean((point) => 1 / point.temperatureK),
    massKg: GEL_TABLE_CUP_KG.value,
  };
}

interface Solved {
  readonly level: number;
  readonly slopes: readonly number[];
  /** Which of the terms the points settle. */
  readonly fitted: readonly number[];
  readonly logHalf: (cup: CupState) => number;
}

function solve(points: readonly GelPoint[], terms: readonly Term[]): Solved {
  const choices = points.length >= LEAST_POINTS_TO_FIT ? [[0, 1], [1], [0], []] : [[]];
  for (const fitted of choices) {
    const fixed = terms.map((_, i) => i).filter((i) => !fitted.includes(i));
    const row = (at: Pick<CupState, "temperatureK" | "dose">) => [
      1,
      ...fitted.map((i) => terms[i]!.column(at)),
    ];
    const fit = fitLeastSquares(
      points.map(row),
      points.map(
        (point) =>
          Math.log(point.gelS) -
          fixed.reduce((sum, i) => sum + terms[i]!.column(point) * terms[i]!.byDefault.value, 0),
      ),
    );
    if (fit === null) continue;
    const slopes = terms.map((term, i) =>
      fitted.includes(i) ? fit.coefficients[1 + fitted.indexOf(i)]! : term.byDefault.value,
    );
    return { level: fit.coefficients[0]!, slopes, fitted, logHalf: (cup) => fitLogHalf(fit, row(cup)) };
  }
  throw new RangeError("a mean of gel points always exists");
}

/** For one more cup: the fit's own uncertainty and the scatter of a single line. */
function fitLogHalf(fit: LinearFit, row: readonly number[]): number {
  const spread = Math.sqrt(1 + fit.leverage(row));
  if (fit.freedom === 0) return STUDENT_T_95.normal * GEL_BAND.readingLogSd.value * spread;
  return studentT95(fit.freedom) * Math.sqrt(fit.residualSumSquares / fit.freedom) * spread;
}

function farFrom(points: readonly GelPoint[], cup: CupState): FarIn | null {
  const temperatures = points.map((point) => point.temperatureK);
  const doses = points.map((point) => point.dose);
  const [least, most] = [Math.min(...doses), Math.max(...doses)];
  const doseRoom = GEL_BAND.farDoseShare.value * (most - least);
  const room = GEL_BAND.farTemperatureK.value;
  if (
    cup.temperatureK < Math.min(...temperatures) - room ||
    cup.temperatureK > Math.max(...temperatures) + room
  )
    return "temperature";
  return cup.dose < least - doseRoom || cup.dose > most + doseRoom ? "dose" : null;
}
