import type { Films } from "./buildFilms";
import type { CalendarTask } from "./CalendarTask";
import type { HandsOn } from "./Film";
import type { Followers } from "./listFollowers";
import type { Placed } from "./Placed";
import type { WorkHours } from "./workHours";

/** One board's steps, and what of them stands in the calendar so far. */
export interface Job {
  readonly number: number;
  readonly tasks: readonly CalendarTask[];
  readonly followers: Followers;
  readonly films: Films;
  /** Nothing of it that is still to do begins before. */
  readonly resumeS: number;
  readonly placed: ReadonlyMap<string, Placed>;
}

/** When one board has a pair of stands: hands on it, or a coat too soft to be lifted off. */
export interface Holding extends HandsOn {
  readonly job: number;
}

/** The shop while its calendar fills: one crew, and so many pairs of stands. */
export interface Shop {
  readonly hours: WorkHours;
  /** When the crew's hands are on some board, in the order in which they come off. */
  readonly busy: readonly HandsOn[];
  readonly stands: number;
  readonly holdings: readonly Holding[];
}

/** The shop with its hands and stands taken, and the boards with their steps placed. */
export interface Filled {
  readonly shop: Shop;
  readonly jobs: readonly Job[];
}
