import type { AirPiece } from "./computeReadyS";
import type { Crew } from "./computeSpreadS";

/** The shop's air. Time counts from the start of a working day, on which a coat goes on. */
export interface AirCurve {
  /** Mean over the working hours. */
  readonly workingK: number;
  /** Even stretches from `startS` on, their times counted from there; they end where nothing more is known. */
  readonly pieces: (startS: number) => Iterable<AirPiece>;
  /** How much the air warms over the hours after the start; nought where it is steady or falls. */
  readonly risesByK: number;
  /** How much colder the night before is than the working hours; nought where that is not known. */
  readonly nightColderByK: number;
}

/** The shop as the mixing sees it. */
export interface ShopAir extends AirCurve {
  /** Of the resin before the hardener goes in. */
  readonly resinK: number;
  /** Null without humidity. */
  readonly dewPointK: number | null;
  readonly crew: Crew;
}
