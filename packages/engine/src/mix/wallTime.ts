import { S_PER_HOUR, S_PER_MINUTE } from "../foundation/units";

/**
 * Local wall time, `2026-04-11T09:00`, as seconds on an even scale without zones: differences within a build are right as
 * long as no clock is changed in between.
 * @returns null where it is not such a time
 */
export function parseWallTimeS(text: string): number | null {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?$/.test(text)) return null;
  const milliseconds = Date.parse(`${text}Z`);
  return Number.isNaN(milliseconds) ? null : milliseconds / 1000;
}

/** `09:00` as seconds from midnight; null where it is not a time of day. */
export function parseTimeOfDayS(text: string): number | null {
  const match = /^(\d\d):(\d\d)$/.exec(text);
  if (match === null) return null;
  const [hours, minutes] = [Number(match[1]), Number(match[2])];
  return hours > 24 || minutes > 59 ? null : hours * S_PER_HOUR + minutes * S_PER_MINUTE;
}
