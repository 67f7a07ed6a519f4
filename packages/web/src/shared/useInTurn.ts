import { useEffect, useState } from "react";
import { flushSync } from "react-dom";
import { takeTurn } from "./takeTurn";

/** The value, a little later: each place that follows it is made anew in its turn, and whole before the next. */
export function useInTurn<T>(value: T): T {
  const [shown, show] = useState(value);
  useEffect(
    () => (value === shown ? undefined : takeTurn(() => flushSync(() => show(() => value)))),
    [value, shown],
  );
  return shown;
}
