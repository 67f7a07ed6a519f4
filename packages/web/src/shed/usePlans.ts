import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { type BoardEntry, readBoard } from "../api/boardClient";
import type { PlanRead } from "../plan/GoodBoard";
import { planner } from "../plan/tabPlanner";
import { openPlanQueue, type PlanQueue } from "./openPlanQueue";

/** Worked out for a revision once, it is not worked out again while the tab is open. */
const kept = new Map<string, PlanRead>();
const keyOf = ({ id, revision }: BoardEntry) => `${id} ${revision}`;

export interface Plans {
  /** Null where a board could not be fetched; missing while it is not worked out. */
  readonly reads: ReadonlyMap<string, PlanRead | null>;
  /** This board is in view. */
  hurry(id: string): void;
}

/** The plans of the boards, those in view first; with `all` the others behind them. */
export function usePlans(entries: readonly BoardEntry[], all: boolean): Plans {
  const byId = useMemo(() => new Map(entries.map((entry) => [entry.id, entry])), [entries]);
  const [reads, setReads] = useState<ReadonlyMap<string, PlanRead | null>>(() => keptOf(entries));
  const queue = useRef<PlanQueue | null>(null);
  useEffect(() => {
    setReads(keptOf(entries));
    const opened = openPlanQueue<PlanRead>({
      read: async (id) => (await readBoard(id)).text,
      plan: planner.plan,
      told(id, planned) {
        const entry = byId.get(id);
        if (entry !== undefined && planned !== null) kept.set(keyOf(entry), planned);
        setReads((before) => new Map(before).set(id, planned));
      },
    });
    queue.current = opened;
    return () => opened.stop();
  }, [entries, byId]);
  useEffect(() => {
    if (all) queue.current?.add(entries.filter((entry) => !kept.has(keyOf(entry))).map(({ id }) => id));
  }, [entries, all]);
  const hurry = useCallback(
    (id: string) => {
      const entry = byId.get(id);
      if (entry !== undefined && !kept.has(keyOf(entry))) queue.current?.hurry(id);
    },
    [byId],
  );
  return { reads, hurry };
}

function keptOf(entries: readonly BoardEntry[]): ReadonlyMap<string, PlanRead> {
  return new Map(
    entries.flatMap((entry) => {
      const read = kept.get(keyOf(entry));
      return read === undefined ? [] : [[entry.id, read] as const];
    }),
  );
}
