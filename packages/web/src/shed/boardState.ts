import type { Plan } from "@lapline/engine";
import { type Reader, tell, wallTimeText } from "@lapline/present";
import { nextStep } from "../board/nextStep";
import { localMs } from "../shared/localMs";

/** Where a board stands, in the order in which it is said: the first that holds. */
export const BOARD_STATES = ["measure", "stopped", "curing", "waiting", "open", "ready"] as const;
export type BoardStateKind = (typeof BOARD_STATES)[number];

export interface BoardState {
  readonly kind: BoardStateKind;
  /** When the next step can begin, local wall time; null where it can now or no date is known. */
  readonly from: string | null;
  /** The next step; null while the board has no order of work, and once all is done. */
  readonly next: NonNullable<Plan["steps"]>[number] | null;
}

/** Where a board stands at an instant of the browser's clock, from its plan and record. */
export function boardStateAt(plan: Plan, nowMs: number): BoardState {
  const next = nextStep(plan);
  const at = { from: null, next };
  if (plan.shape === null) return { ...at, kind: "measure" };
  if (plan.findings.some(({ severity }) => severity === "blocker")) return { ...at, kind: "stopped" };
  if (next === null || plan.water.ready) return { ...at, kind: "ready" };
  const entry = plan.calendar?.find(({ step }) => step === next.id);
  if (!isAhead(entry?.startsAt, nowMs)) return { ...at, kind: "open" };
  const from = entry?.startsAt ?? null;
  return {
    ...at,
    from,
    kind: isAhead(entry?.opensAt, nowMs) && isCuring(plan, nowMs) ? "curing" : "waiting",
  };
}

/** Something that was laid is not yet ready for what follows it. */
function isCuring({ steps, calendar }: Plan, nowMs: number): boolean {
  return (calendar ?? []).some(
    ({ step, done, readyAt }) =>
      done && isAhead(readyAt, nowMs) && steps?.find(({ id }) => id === step)?.cures != null,
  );
}

function isAhead(text: string | null | undefined, nowMs: number): boolean {
  const atMs = localMs(text);
  return atMs !== null && atMs > nowMs;
}

/** The state in a word; with a time where there is one to wait for. */
export function boardStateWords({ kind, from }: BoardState, reader: Reader): string {
  const t = tell(reader);
  if (from !== null && kind === "curing") return t`curing until ${wallTimeText(from, reader)}`;
  if (from !== null) return t`waiting until ${wallTimeText(from, reader)}`;
  return stateName(kind, reader);
}

/** The same without a time, as it is chosen from a list. */
export function stateName(kind: BoardStateKind, reader: Reader): string {
  const t = tell(reader);
  return {
    measure: t`to be measured`,
    stopped: t`stopped`,
    curing: t`curing`,
    waiting: t`waiting`,
    open: t`can go on`,
    ready: t`ready for water`,
  }[kind];
}
