import { useEffect, useState } from "react";

/** Longer than between two keys of a word, so that what follows later never holds up the next key. */
const PAUSE_MS = 250;
const TYPED_IN = "input[type=text], textarea";

/** The value as it is, or while somebody types as it was until the keys rest. */
export function useAfterTyping<T>(value: T): T {
  const [rested, setRested] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => setRested(value), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [value]);
  const isTyping = document.activeElement?.matches(TYPED_IN) === true;
  return isTyping ? rested : value;
}
