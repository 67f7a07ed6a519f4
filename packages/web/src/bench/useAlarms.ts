import type { Plan } from "@lapline/engine";
import { useEffect, useRef, useState } from "react";
import { keep, recall } from "../settings/kept";
import { soundAlarm } from "./alarm";
import type { ClockMoment } from "./ClockMoment";
import { type Heard, hearAlarms, readHeard, withCome } from "./hearAlarms";

export interface Alarms {
  /** Times that have come and that nobody has said to have seen. */
  readonly due: readonly ClockMoment[];
  clear(): void;
}

/**
 * Rings for each time of the board's wet clocks as it comes. What has rung stays on the device, so that what came while the Bench
 * was shut, reloaded or asleep, or before it heard of the cup, rings as soon as it is there, and nothing rings twice.
 */
export function useAlarms(board: string, plan: Plan, nowMs: number): Alarms {
  const key = `lapline.bench.heard.${board}`;
  const heard = useRef<Heard | null>(null);
  const [due, setDue] = useState<readonly ClockMoment[]>([]);
  useEffect(() => {
    const before = heard.current ?? readHeard(recall(key));
    const { come, heard: after } = hearAlarms(plan, before, nowMs);
    heard.current = after;
    if (come.length > 0 || before === null) keep(key, JSON.stringify(after));
    if (come.length === 0) return;
    soundAlarm();
    setDue((waiting) => withCome(waiting, come));
  }, [key, plan, nowMs]);
  return { due, clear: () => setDue([]) };
}
