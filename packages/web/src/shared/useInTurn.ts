import { useEffect, useState } from "react";
import { takeTurn } from "./takeTurn";

/** The value, a little later: each place that follows it does so in a slice of time of its own. */
export function useInTurn<T>(value: T): T {
  const [shown, show] = useState(value);
  useEffect(() => (value === shown ? undefined : takeTurn(() => show(() => value))), [value, shown]);
  return shown;
}
