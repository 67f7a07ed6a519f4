import { useEffect, useState } from "react";
import type { PlanRead } from "../plan/GoodBoard";
import { planner } from "../plan/tabPlanner";

/** The newest plan that came of a board file's text as it is typed; null until the first. */
export function usePlanned(text: string): PlanRead | null {
  const [read, setRead] = useState<PlanRead | null>(null);
  useEffect(() => {
    let isCurrent = true;
    planner.plan(text).then(
      (planned) => isCurrent && setRead(planned),
      // Whoever wants the board kept asks again and is told why not.
      () => undefined,
    );
    return () => {
      isCurrent = false;
    };
  }, [text]);
  return read;
}
