import { CALENDAR } from "../constants/calendarDefaults";
import { RISING_AIR, SHOP_DEFAULTS, SHOP_RANGE_K } from "../constants/shopDefaults";
import { type Phrase, say } from "../foundation/phrase";
import { temperature } from "../foundation/quantity";
import { type Assumption, finding, type Stage } from "../foundation/stage";
import { S_PER_DAY } from "../foundation/units";
import { assume } from "../sources/assume";
import type { AirPiece } from "./AirPiece";
import { type AirReading, airAt, dayNightPieces, READING_STEP_S, readingPieces } from "./airPieces";
import type { AirCurve } from "./ShopAir";
import type { ShopInput } from "./ShopInput";
import { parseTimeOfDayS, parseWallTimeS } from "./wallTime";

const PATH = "shop.temperature";

/** The shop's air as day and night, as a list of readings, or, where nothing is given, as an assumption. */
export function readAirCurve(shop: ShopInput): Stage<AirCurve> {
  const hours = shop.hours ?? SHOP_DEFAULTS.hours;
  const assumptions: Assumption[] = [];
  if (shop.hours === undefined) {
    const why =
      "no working hours are given; coats go on at their start, and the day's temperature holds for them";
    assumptions.push(assume("shop.hours", say`${hours.from} to ${hours.to}`, why, "convention"));
  }
  const [fromS, toS] = [parseTimeOfDayS(hours.from), parseTimeOfDayS(hours.to)];
  if (fromS === null || toS === null || toS <= fromS) {
    return refuse(
      "mix.hours",
      "shop.hours",
      say`the hours from ${hours.from} to ${hours.to} end before they begin`,
    );
  }
  const day: Workday = { startText: shop.start, fromS, workdayS: toS - fromS };
  const given = shop.temperature;
  if (given === undefined) {
    const airK = SHOP_DEFAULTS.airK.value;
    const why =
      "no shop temperature is given; this one is held day and night, and every time of the mix hangs on it";
    assumptions.push(assume(PATH, say`${temperature(airK)}`, why, "convention"));
    return { value: dayNightCurve(airK, airK, day), findings: [], assumptions };
  }
  if ("dayK" in given) {
    const bad = [given.dayK, given.nightK].find(isImplausible);
    if (bad !== undefined) return refuseTemperature(bad);
    return { value: dayNightCurve(given.dayK, given.nightK, day), findings: [], assumptions };
  }
  const read = listCurve(given, day);
  return { ...read, assumptions: [...assumptions, ...read.assumptions] };
}

function dayNightCurve(dayK: number, nightK: number, day: Workday): AirCurve {
  return {
    // Every day is like the other.
    placeOf: (wallS) => modulo(wallS - day.fromS, S_PER_DAY),
    workingK: dayK,
    isWorking: (atS) => modulo(atS, S_PER_DAY) < day.workdayS,
    heldK: null,
    pieces: dayNightPieces({ dayK, nightK, workdayS: day.workdayS }),
    endsSoon: false,
    risesByK: 0,
    nightColderByK: Math.max(0, dayK - nightK),
  };
}

interface Workday {
  readonly startText: string | undefined;
  readonly fromS: number;
  readonly workdayS: number;
}

function listCurve(
  list: ReadonlyArray<{ readonly at: string; readonly airK: number }>,
  day: Workday,
): Stage<AirCurve> {
  const bad = list.find((entry) => isImplausible(entry.airK));
  if (bad !== undefined) return refuseTemperature(bad.airK);
  const times = list.map((entry) => parseWallTimeS(entry.at));
  const unread = list.find((_, i) => times[i] === null);
  if (unread !== undefined)
    return refuse("mix.temperature-list", PATH, say`"${unread.at}" is not a time like 2026-04-11T09:00`);
  const absolute = list
    .map((entry, i) => ({ atS: times[i]!, airK: entry.airK }))
    .sort((a, b) => a.atS - b.atS);
  const zeroS = startOfWork(absolute, day);
  const readings = absolute.map(({ atS, airK }) => ({ atS: atS - zeroS, airK }));
  const firstK = airAt(readings, 0);
  if (readings.length < 2 || firstK === null || readings.at(-1)!.atS <= 0) {
    return refuse(
      "mix.temperature-list",
      PATH,
      say`the list needs a reading before the start of work and one after it`,
    );
  }
  const pieces = readingPieces(readings);
  const curve: AirCurve = {
    placeOf: (wallS) => (wallS >= zeroS && wallS <= absolute.at(-1)!.atS ? wallS - zeroS : null),
    workingK: meanBetween(pieces, 0, day.workdayS),
    isWorking: (atS) => modulo(zeroS + atS - day.fromS, S_PER_DAY) < day.workdayS,
    heldK: meanBetween(pieces, pieces.at(-1)!.toS - CALENDAR.lastDayS.value, Number.POSITIVE_INFINITY),
    pieces,
    endsSoon: true,
    risesByK: risesBy(readings, firstK),
    nightColderByK: 0,
  };
  return { value: curve, findings: [], assumptions: [] };
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}

/** The start that is given; else the hours' begin on the first day of the list, or the first reading if that is later. */
function startOfWork(absolute: readonly AirReading[], day: Workday): number {
  const given = day.startText === undefined ? null : parseWallTimeS(day.startText);
  const firstS = absolute[0]?.atS ?? 0;
  if (given !== null) return given;
  const morningS = Math.floor(firstS / S_PER_DAY) * S_PER_DAY + day.fromS;
  return Math.max(firstS, morningS);
}

function meanBetween(pieces: readonly AirPiece[], beginS: number, endS: number): number {
  let [sum, lengthS] = [0, 0];
  for (const { fromS, toS, airK } of pieces) {
    if (fromS < beginS) continue;
    if (fromS >= endS) break;
    sum += airK * (toS - fromS);
    lengthS += toS - fromS;
  }
  return sum / lengthS;
}

function risesBy(readings: readonly AirReading[], firstK: number): number {
  let mostK = firstK;
  for (let atS = READING_STEP_S; atS <= RISING_AIR.overS.value; atS += READING_STEP_S) {
    mostK = Math.max(mostK, airAt(readings, atS) ?? mostK);
  }
  return mostK - firstK;
}

function isImplausible(airK: number): boolean {
  return !(airK >= SHOP_RANGE_K.least && airK <= SHOP_RANGE_K.most);
}

function refuseTemperature(airK: number): Stage<AirCurve> {
  const range = say`a shop's air lies between ${temperature(SHOP_RANGE_K.least)} and ${temperature(SHOP_RANGE_K.most)}`;
  const says = Number.isFinite(airK)
    ? say`${range}; ${temperature(airK)} was read`
    : say`${range}; what was read is no number`;
  return { value: null, findings: [finding("blocker", "mix.shop-temperature", PATH, says)], assumptions: [] };
}

function refuse(code: string, path: string, says: Phrase): Stage<AirCurve> {
  return { value: null, findings: [finding("blocker", code, path, says)], assumptions: [] };
}
