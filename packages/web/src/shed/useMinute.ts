import { useEffect, useState } from "react";

const MINUTE_MS = 60_000;

/** The browser's clock, once a minute: what waits for a time on the wall need not be looked at more often. */
export function useMinute(): number {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    const ticks = setInterval(() => setNow(Date.now()), MINUTE_MS);
    return () => clearInterval(ticks);
  }, []);
  return nowMs;
}
