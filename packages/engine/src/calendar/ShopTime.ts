import { CALENDAR } from "../constants/calendarDefaults";
import { CURE_HORIZON_S, SHOP_DEFAULTS } from "../constants/shopDefaults";
import { S_PER_DAY, S_PER_HOUR, S_PER_MINUTE } from "../foundation/units";
import type { AirPiece } from "../mix/AirPiece";
import { buildShopAir } from "../mix/buildShopAir";
import type { ShopAir } from "../mix/ShopAir";
import type { ShopInput } from "../mix/ShopInput";
import { parseTimeOfDayS, parseWallTimeS } from "../mix/wallTime";
import { buildWallClock, type WallClock } from "./buildWallClock";
import { buildWorkHours, type WorkHours } from "./workHours";

/** The shop's days: clock, hours, and the air on one scale of passed seconds. */
export interface ShopTime {
  readonly hours: WorkHours;
  readonly air: ShopAir;
  /** When the work begins; where no date is known the first day's hours do. */
  readonly startS: number;
  /** Whether days are only counted, for nobody gave a date. */
  readonly isCounted: boolean;
  /** Whether the list of temperatures ends, and its last day is held from there on. */
  readonly heldFromS: number | null;
  readonly parse: (wallText: string) => number | null;
  readonly format: (passedS: number) => string;
}

/**
 * Reads the shop's days from its hours, its start or whatever else carries a date, and its air.
 * @param recorded wall times of the record, in any order
 * @returns null where hours or air cannot be; the mix has said why
 */
export function readShopTime(shop: ShopInput, recorded: readonly string[]): ShopTime | null {
  const hours = shop.hours ?? SHOP_DEFAULTS.hours;
  const [fromS, toS] = [parseTimeOfDayS(hours.from), parseTimeOfDayS(hours.to)];
  if (fromS === null || toS === null || toS - fromS < CALENDAR.leastSittingS.value) return null;
  const list = Array.isArray(shop.temperature) ? earliest(shop.temperature.map(({ at }) => at)) : null;
  const record = earliest(recorded);
  const given = shop.start === undefined ? null : parseWallTimeS(shop.start);
  const dated = given ?? (list === null ? record : Math.max(list, midnightOf(list) + fromS));
  const startWallS = dated ?? fromS;
  const clock = buildWallClock(shop.clockChanges ?? []);
  const firstWallS = Math.min(startWallS, record ?? startWallS) - S_PER_DAY;
  const zeroWallS = list ?? midnightOf(firstWallS) + fromS;
  const air = buildShopAir(list === null ? shop : { ...shop, start: formatWall(zeroWallS) });
  if (air.value === null) return null;
  const dateOf = rememberTexts(formatDate);
  const carried = carryAir(air.value.pieces, {
    clock,
    zeroWallS,
    lastWallS: latest(recorded, startWallS),
    isList: list !== null,
  });
  return {
    hours: buildWorkHours(clock, fromS, toS),
    air: { ...air.value, pieces: carried.pieces },
    startS: clock.passedS(startWallS),
    isCounted: dated === null,
    heldFromS: carried.heldFromS,
    parse: (text) => {
      const wallS = parseWallTimeS(text);
      return wallS === null ? null : clock.passedS(wallS);
    },
    format: rememberTexts((passedS) =>
      dated === null ? formatCounted(clock.wallS(passedS)) : formatWall(clock.wallS(passedS), dateOf),
    ),
  };
}

/** The same few moments, on the same few days, are told again and again. */
function rememberTexts(format: (timeS: number) => string): (timeS: number) => string {
  const known = new Map<number, string>();
  return (timeS) => {
    const before = known.get(timeS);
    if (before !== undefined) return before;
    const text = format(timeS);
    known.set(timeS, text);
    return text;
  };
}

function earliest(texts: readonly string[]): number | null {
  const times = texts.map(parseWallTimeS).filter((timeS) => timeS !== null);
  return times.length === 0 ? null : Math.min(...times);
}

function latest(texts: readonly string[], leastWallS: number): number {
  return texts.reduce((mostS, text) => Math.max(mostS, parseWallTimeS(text) ?? mostS), leastWallS);
}

function midnightOf(wallS: number): number {
  return Math.floor(wallS / S_PER_DAY) * S_PER_DAY;
}

interface Carried {
  readonly clock: WallClock;
  readonly zeroWallS: number;
  /** The start, or the record's last entry: a board that lay for months goes on from there. */
  readonly lastWallS: number;
  readonly isList: boolean;
}

/** The air's stretches, which go by the wall, in passed seconds; days and nights go on, a list's last day is held. */
function carryAir(
  pieces: readonly AirPiece[],
  { clock, zeroWallS, lastWallS, isList }: Carried,
): { readonly pieces: readonly AirPiece[]; readonly heldFromS: number | null } {
  const gapS = Math.min(Math.max(0, lastWallS - zeroWallS), CALENDAR.longestRestS.value);
  const all = isList ? pieces : [...repeatDays(pieces, gapS), ...shift(pieces, wholeDays(gapS))];
  const passed = all.map(({ fromS, toS, airK }) => ({
    fromS: clock.passedS(zeroWallS + fromS),
    toS: clock.passedS(zeroWallS + toS),
    airK,
  }));
  const last = passed.at(-1);
  if (!isList || last === undefined) return { pieces: passed, heldFromS: null };
  const lastDay = passed.filter(({ fromS }) => fromS >= last.toS - CALENDAR.lastDayS.value);
  const lengthS = lastDay.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0);
  const airK = lastDay.reduce((sum, piece) => sum + piece.airK * (piece.toS - piece.fromS), 0) / lengthS;
  const fromS = Math.max(last.toS, clock.passedS(zeroWallS + gapS));
  const held = { fromS: last.toS, toS: fromS + 2 * CURE_HORIZON_S.value, airK };
  return { pieces: [...passed, held], heldFromS: last.toS };
}

/** The first day over and over, up to as many whole days as the gap has; every day is like the other. */
function repeatDays(pieces: readonly AirPiece[], gapS: number): AirPiece[] {
  const day = pieces.filter(({ fromS }) => fromS < S_PER_DAY);
  return Array.from({ length: wholeDays(gapS) / S_PER_DAY }, (_, i) => shift(day, i * S_PER_DAY)).flat();
}

function shift(pieces: readonly AirPiece[], byS: number): AirPiece[] {
  return pieces.map(({ fromS, toS, airK }) => ({ fromS: fromS + byS, toS: toS + byS, airK }));
}

function wholeDays(timeS: number): number {
  return Math.floor(timeS / S_PER_DAY) * S_PER_DAY;
}

/** To the minute: the one that has begun by then. */
function formatWall(wallS: number, dateAt = formatDate): string {
  return `${dateAt(midnightOf(wallS))}T${formatClock(wallS)}`;
}

function formatDate(midnightS: number): string {
  return new Date(midnightS * MS_PER_S).toISOString().slice(0, "2026-04-11".length);
}

function formatCounted(wallS: number): string {
  return `day ${Math.floor(wallS / S_PER_DAY) + 1} ${formatClock(wallS)}`;
}

function formatClock(wallS: number): string {
  const minutes = Math.floor((wallS - midnightOf(wallS)) / S_PER_MINUTE);
  const twoDigits = (value: number) => String(value).padStart(2, "0");
  return `${twoDigits(Math.floor(minutes / MINUTES_PER_HOUR))}:${twoDigits(minutes % MINUTES_PER_HOUR)}`;
}

const MS_PER_S = 1000;
const MINUTES_PER_HOUR = S_PER_HOUR / S_PER_MINUTE;
