import { GEL_BAND } from "../constants/gelBand";

/** Where a cup stands: its temperature, its dose (hardener over base, by mass) and its mixed mass. */
export interface CupState {
  readonly temperatureK: number;
  readonly dose: number;
  readonly massKg: number;
}

export type FarIn = "temperature" | "dose" | "mass";

/** How long one resin's cup stays open, with the band about it. */
export interface GelModel {
  /** Dose exponent n; nought for a fixed ratio. */
  readonly exponent: number;
  readonly activationEnergyJMol: number;
  /** Gel time at the middle of the points. */
  readonly reference: CupState & { readonly gelS: number };
  gelS(cup: CupState): number;
  /** Half of the 90 % band in ln(time): the cup gels between gelS e^-h and gelS e^h. */
  logHalfBand(cup: CupState): number;
  /** In what this is further from the points than a fit may be carried without a word; null where it is near. */
  farIn(cup: CupState): FarIn | null;
}

/** The early end of the band. */
export function gelLowS(model: GelModel, cup: CupState): number {
  return model.gelS(cup) * Math.exp(-model.logHalfBand(cup));
}

export function gelHighS(model: GelModel, cup: CupState): number {
  return model.gelS(cup) * Math.exp(model.logHalfBand(cup));
}

/** When all of a cup must lie spread: the early end of its gel with the declared margin kept in hand. */
export function computeSpreadByS(model: GelModel, cup: CupState): number {
  return gelLowS(model, cup) * (1 - GEL_BAND.spreadMarginShare.value);
}
