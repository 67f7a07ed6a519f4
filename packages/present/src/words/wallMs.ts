const COUNTED = /^day (\d+) (\d\d):(\d\d)$/;
const MS_PER_MINUTE = 60_000;
const MINUTES_PER_DAY = 1440;

/** A time of the calendar as milliseconds by the wall, so that two can be compared and drawn; counted days begin at nought. */
export function wallMs(text: string): number {
  const [, day, hours, minutes] = COUNTED.exec(text) ?? [];
  if (day === undefined) return Date.parse(`${text}Z`);
  return ((Number(day) - 1) * MINUTES_PER_DAY + Number(hours) * 60 + Number(minutes)) * MS_PER_MINUTE;
}
