import { kelvinFromCelsius, S_PER_DAY, S_PER_HOUR } from "../foundation/units";
import type { SourceId } from "../sources/sources";
import type { Sourced } from "./Sourced";

const CONVENTION: SourceId = "convention";
const PRACTICE: SourceId = "common-practice";

/** What is taken where the board file says nothing of the shop; each is told as an assumption where it is used. */
export const SHOP_DEFAULTS = {
  airK: { value: kelvinFromCelsius(18), source: CONVENTION },
  people: { value: 1, source: CONVENTION },
  hours: { from: "09:00", to: "18:00" },
  experience: "first",
} as const;

interface Range {
  readonly least: number;
  readonly most: number;
  readonly source: SourceId;
}

/** A shop colder or hotter than this is a misread thermometer, not a place where resin is used. */
export const SHOP_RANGE_K: Range = {
  least: kelvinFromCelsius(-30),
  most: kelvinFromCelsius(60),
  source: CONVENTION,
};

/** A reading of the resin outside this is a mistake. */
export const RESIN_RANGE_K: Range = {
  least: kelvinFromCelsius(0),
  most: kelvinFromCelsius(60),
  source: CONVENTION,
};

/** How long a forecast of the film is carried on before it is given up: two months. */
export const CURE_HORIZON_S: Sourced = { value: 60 * S_PER_DAY, source: CONVENTION };

/** Air that warms by this much while the resin is still wet drives air out of the foam. */
export const RISING_AIR = {
  overS: { value: 3 * S_PER_HOUR, source: PRACTICE },
  byK: { value: 1, source: PRACTICE },
} as const satisfies Record<string, Sourced>;

/** A blank that comes out of a night this much colder warms, and breathes out, under the resin. */
export const COLD_BLANK_K: Sourced = { value: 3, source: PRACTICE };
