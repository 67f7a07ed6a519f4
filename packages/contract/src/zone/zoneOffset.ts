const FORMATS = new Map<string, Intl.DateTimeFormat>();

/** Whether this machine's time zone data (IANA, by the language's own Intl) know a zone of that name. */
export function isTimeZone(name: string): boolean {
  try {
    formatOf(name);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** How far a zone's clocks are ahead of UTC at a moment, in seconds. */
export function zoneOffsetS(zone: string, utcMs: number): number {
  const parts = formatOf(zone).formatToParts(utcMs);
  const read = (type: Intl.DateTimeFormatPartTypes) =>
    Number(parts.find((part) => part.type === type)?.value ?? 0);
  const wallMs = Date.UTC(
    read("year"),
    read("month") - 1,
    read("day"),
    read("hour"),
    read("minute"),
    read("second"),
  );
  return (wallMs - Math.floor(utcMs / 1000) * 1000) / 1000;
}

/** Making one takes as long as a thousand uses. */
function formatOf(zone: string): Intl.DateTimeFormat {
  const known = FORMATS.get(zone);
  if (known !== undefined) return known;
  const made = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    hourCycle: "h23",
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    second: "2-digit",
  });
  FORMATS.set(zone, made);
  return made;
}
