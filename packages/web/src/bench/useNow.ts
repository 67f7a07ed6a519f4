import { useEffect, useState } from "react";

const TICK_MS = 1000;

/** The browser's clock, once a second and at once when the page comes back into sight. */
export function useNow(): number {
  const [nowMs, setNow] = useState(() => Date.now());
  useEffect(() => {
    const look = () => setNow(Date.now());
    const ticks = setInterval(look, TICK_MS);
    document.addEventListener("visibilitychange", look);
    window.addEventListener("pageshow", look);
    return () => {
      clearInterval(ticks);
      document.removeEventListener("visibilitychange", look);
      window.removeEventListener("pageshow", look);
    };
  }, []);
  return nowMs;
}
