import { zoneOffsetS } from "./zoneOffset";

/**
 * The moment at which a zone's clocks show a wall time. One that is skipped is read by the clock before the change, and of one
 * that comes twice the first is taken (RFC 5545, 3.3.5).
 * @param wallText such as `2026-04-11T09:00`
 */
export function utcOfWall(zone: string, wallText: string): Date {
  const wallMs = Date.parse(`${wallText}Z`);
  const readings = [wallMs - MS_PER_DAY, wallMs + MS_PER_DAY].map((aboutMs) => {
    const offsetMs = zoneOffsetS(zone, aboutMs) * 1000;
    const utcMs = wallMs - offsetMs;
    return { utcMs, isShown: zoneOffsetS(zone, utcMs) * 1000 === offsetMs };
  });
  return new Date((readings.find(({ isShown }) => isShown) ?? readings[0]!).utcMs);
}

/** Clocks are not changed twice in two days. */
const MS_PER_DAY = 86_400_000;
