import { useEffect, useState } from "react";

/** Longer than between two keys of a word, so that what follows later never holds up the next key. */
const PAUSE_MS = 250;

/** The value as it is, or while somebody types within `place` as it was until the keys rest. */
export function useAfterTyping<T>(value: T, place: string): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  const isTyping = document.activeElement?.closest(place) != null;
  return isTyping ? rested : value;
}
