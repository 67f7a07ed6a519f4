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
  const carried = carryAir(air.value.pieces, { clock, zeroWallS, isList: list !== null });
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

function midnightOf(wallS: number): number {
  return Math.floor(wallS / S_PER_DAY) * S_PER_DAY;
}

/** The air's stretches, which go by the wall, in passed seconds; a list's last day is held on. */
function carryAir(
  pieces: readonly AirPiece[],
  {
    clock,
    zeroWallS,
    isList,
  }: { readonly clock: WallClock; readonly zeroWallS: number; readonly isList: boolean },
): { readonly pieces: readonly AirPiece[]; readonly heldFromS: number | null } {
  const passed = pieces.map(({ fromS, toS, airK }) => ({
    fromS: clock.passedS(zeroWallS + fromS),
    toS: clock.passedS(zeroWallS + toS),
    airK,
  }));
  const last = passed.at(-1);
  if (!isList || last === undefined) return { pieces: passed, heldFromS: null };
  const lastDay = passed.filter(({ fromS }) => fromS >= last.toS - CALENDAR.lastDayS.value);
  const lengthS = lastDay.reduce((sum, { fromS, toS }) => sum + toS - fromS, 0);
  const airK = lastDay.reduce((sum, piece) => sum + piece.airK * (piece.toS - piece.fromS), 0) / lengthS;
  const held = { fromS: last.toS, toS: last.toS + 2 * CURE_HORIZON_S.value, airK };
  return { pieces: [...passed, held], heldFromS: last.toS };
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
