import type { Plan } from "@lapline/engine";
import { useEffect, useRef, useState } from "react";
import { keep, recall } from "../settings/kept";
import { soundAlarm } from "./alarm";
import type { ClockMoment } from "./ClockMoment";
import { momentsBetween } from "./listClock";

/** After this long nobody who opens the Bench wants to be rung for what has been. */
const FORGET_MS = 12 * 3600 * 1000;

export interface Alarms {
  /** Times that have come and that nobody has said to have seen. */
  readonly due: readonly ClockMoment[];
  clear(): void;
}

/**
 * Rings for each time of the board's wet clocks as it comes. When the Bench was last looked at stays on the device, so that what
 * came while it was shut, reloaded or asleep rings as soon as it is there again, and nothing rings twice.
 */
export function useAlarms(board: string, plan: Plan, nowMs: number): Alarms {
  const key = `lapline.bench.looked.${board}`;
  const lookedMs = useRef<number | null>(null);
  const [due, setDue] = useState<readonly ClockMoment[]>([]);
  useEffect(() => {
    const fromMs = Math.max(lookedMs.current ?? Number(recall(key) ?? nowMs), nowMs - FORGET_MS);
    const come = momentsBetween(plan, fromMs, nowMs);
    lookedMs.current = nowMs;
    keep(key, String(nowMs));
    if (come.length === 0) return;
    soundAlarm();
    setDue((before) => [...before, ...come]);
  }, [key, plan, nowMs]);
  return { due, clear: () => setDue([]) };
}
