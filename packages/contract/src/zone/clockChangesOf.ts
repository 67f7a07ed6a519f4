import { zoneOffsetS } from "./zoneOffset";

export interface ClockChange {
  readonly at: string;
  readonly byS: number;
}

const MS_PER_DAY = 86_400_000;
const MS_PER_MINUTE = 60_000;
/** Between two looks at a zone's clocks; no zone changes them and back within so little. */
const LOOK_MS = 7 * MS_PER_DAY;
/** A board takes weeks, and its cure is followed for four months. */
const AHEAD_MS = 400 * MS_PER_DAY;

/**
 * The changes of a zone's clocks about a shop's dates, as the engine takes them: it knows no zones itself.
 * @param wallTexts wall times of the board file; none give no changes
 */
export function clockChangesOf(zone: string, wallTexts: readonly string[]): readonly ClockChange[] {
  const times = wallTexts.map((text) => Date.parse(`${text}Z`)).filter((timeMs) => !Number.isNaN(timeMs));
  if (times.length === 0) return [];
  const endMs = Math.max(...times) + AHEAD_MS;
  const changes: ClockChange[] = [];
  for (let atMs = Math.min(...times) - LOOK_MS; atMs < endMs; atMs += LOOK_MS) {
    const [before, after] = [zoneOffsetS(zone, atMs), zoneOffsetS(zone, atMs + LOOK_MS)];
    if (before === after) continue;
    const changeMs = halve(zone, atMs, atMs + LOOK_MS) + before * 1000;
    changes.push({
      at: new Date(changeMs).toISOString().slice(0, "2026-03-29T02:00".length),
      byS: after - before,
    });
  }
  return changes;
}

/** The full minute at which a zone's offset is no longer what it is at the first of two moments. */
function halve(zone: string, fromMs: number, toMs: number): number {
  const old = zoneOffsetS(zone, fromMs);
  let [low, high] = [0, Math.ceil((toMs - fromMs) / MS_PER_MINUTE)];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (zoneOffsetS(zone, fromMs + middle * MS_PER_MINUTE) === old) low = middle;
    else high = middle;
  }
  return fromMs + high * MS_PER_MINUTE;
}
