import type { AirPiece } from "./AirPiece";
import type { Crew } from "./computeSpreadS";

/** The shop's air. Time counts from the start of a working day, on which a coat goes on. */
export interface AirCurve {
  /** A wall time on the curve's own scale; null where nothing is known of the air at that time. */
  readonly placeOf: (wallS: number) => number | null;
  /** Mean over the first day's working hours. */
  readonly workingK: number;
  /** Even stretches without gaps, from the start of work on; they end where nothing more is known. */
  readonly pieces: readonly AirPiece[];
  /** Whether a moment of it lies in the working hours. */
  readonly isWorking: (atS: number) => boolean;
  /** What stands past a last reading: the mean of the day before it; null where every day is like the other. */
  readonly heldK: number | null;
  /** Whether nothing is known of it past a last reading. */
  readonly endsSoon: boolean;
  /** How much the air warms over the hours after the start; nought where it is steady or falls. */
  readonly risesByK: number;
  /** How much colder the night before is than the working hours; nought where that is not known. */
  readonly nightColderByK: number;
}

/** The shop as the mixing sees it. */
export interface ShopAir extends AirCurve {
  /** Of the resin before the hardener goes in; null where it stood in the shop and is as warm as the air by then. */
  readonly resinK: number | null;
  readonly humidity: number | null;
  /** Null without humidity. */
  readonly dewPointK: number | null;
  readonly crew: Crew;
}
