import {
  EXPERIENCE,
  type Experience,
  SPREAD_TIMES,
  type SpreadKind,
  TWO_PEOPLE_SPREAD,
} from "../constants/workTimes";

/** Who is at the board. */
export interface Crew {
  readonly people: number;
  readonly experience: Experience;
}

/**
 * How long one cup takes from the hardener going in until it lies spread: mixing and pouring, then working out its mass.
 * A second person spreads with the first; mixing stays one person's. Common practice, no source.
 * @param massKg mixed resin in the cup
 * @returns s
 */
export function computeSpreadS(kind: SpreadKind, massKg: number, crew: Crew): number {
  const { cupS, perKgS } = SPREAD_TIMES[kind];
  const hands = crew.people >= 2 ? TWO_PEOPLE_SPREAD.value : 1;
  return EXPERIENCE[crew.experience].work.value * (cupS.value + (perKgS.value * massKg) / hands);
}
