import { useEffect, useRef, useState } from "react";

/** Longer than between two keys of a word, so that what follows later never holds up the next key. */
const PAUSE_MS = 250;
const TYPED_IN = "input[type=text], textarea";

/**
 * The value as it is, or while somebody types elsewhere as it was until the keys rest. It never goes back to what it was before.
 * @param isHere whether what is typed just now is typed where the value is shown
 */
export function useAfterTyping<T>(value: T, isHere = false): T {
  const rested = useRef(value);
  const [, showRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => {
      rested.current = value;
      showRested(() => value);
    }, PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  const isTyping = document.activeElement?.matches(TYPED_IN) === true;
  if (isHere || !isTyping) rested.current = value;
  return rested.current;
}
