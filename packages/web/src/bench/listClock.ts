import type { Plan } from "@lapline/engine";
import { localMs } from "../shared/localMs";
import type { ClockKind, ClockMoment } from "./ClockMoment";

type MixCoat = NonNullable<Plan["mix"]>["coats"][number];
type Clock = NonNullable<MixCoat["clock"]>;

const STAGES = [
  { kind: "tape", stage: "pullTape", until: null },
  { kind: "trim", stage: "trimFrom", until: "trimUntil" },
  { kind: "flip", stage: "flip", until: null },
  { kind: "recoat", stage: "recoatFrom", until: "recoatUntil" },
  { kind: "sand", stage: "sandable", until: null },
] as const satisfies ReadonlyArray<{ kind: ClockKind; stage: string; until: string | null }>;

/**
 * The wet clock of one coat on the wall: the plan's clock put behind its last cup's hardener, in the order in which the times
 * come. None before the first cup. A record's time is its whole minute, so that each time comes up to a minute early.
 */
export function listClock({ id, clock, startedAt }: MixCoat): readonly ClockMoment[] {
  const startMs = localMs(startedAt);
  if (clock === null || startMs === null) return [];
  const after = (timeS: number | null): number | null => (timeS === null ? null : startMs + timeS * 1000);
  const spread: ClockMoment = {
    coat: id,
    kind: "spread",
    atMs: startMs + clock.spreadByS * 1000,
    lowMs: null,
    highMs: null,
    untilMs: null,
  };
  const film = STAGES.flatMap(({ kind, stage, until }): ClockMoment[] => {
    const atMs = after(clock[`${stage}S`]);
    if (atMs === null) return [];
    const band = { lowMs: after(clock[`${stage}LowS`]), highMs: after(clock[`${stage}HighS`]) };
    return [{ coat: id, kind, atMs, ...band, untilMs: until === null ? null : after(untilS(clock, until)) }];
  });
  return [spread, ...film].toSorted((a, b) => a.atMs - b.atMs);
}

const untilS = (clock: Clock, stage: "trimUntil" | "recoatUntil"): number | null => clock[`${stage}S`];

/** The clocks that run now, the coat whose next time comes first in front: all but those whose last time is past. */
export function runningClocks(
  plan: Plan,
  nowMs: number,
): ReadonlyArray<{ readonly coat: string; readonly moments: readonly ClockMoment[] }> {
  const nextMs = (moments: readonly ClockMoment[]): number =>
    moments.find(({ atMs }) => atMs > nowMs)?.atMs ?? Number.POSITIVE_INFINITY;
  return (plan.mix?.coats ?? [])
    .map((coat) => ({ coat: coat.id, moments: listClock(coat) }))
    .filter(({ moments }) => moments.some(({ atMs }) => atMs > nowMs))
    .toSorted((a, b) => nextMs(a.moments) - nextMs(b.moments));
}
