/** A local wall time of the record, `2026-04-11T09:00`, on the browser's own clock; null where it is none. */
export function localMs(text: string | null | undefined): number | null {
  if (text === null || text === undefined || !/^\d{4}-\d\d-\d\dT\d\d:\d\d/.test(text)) return null;
  const timeMs = new Date(text).getTime();
  return Number.isNaN(timeMs) ? null : timeMs;
}
