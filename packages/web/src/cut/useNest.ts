import type { NestAnswer, NestLay, NestOrder, NestProgress } from "@lapline/nest";
import { useCallback, useEffect, useRef, useState } from "react";

export type NestState =
  | { readonly kind: "idle" }
  | { readonly kind: "running"; readonly progress: NestProgress | null }
  | { readonly kind: "done"; readonly lay: NestLay; readonly isWhole: boolean }
  | { readonly kind: "failed" };

const SEARCH = { seed: 1, layings: 3000 } as const;
const IDLE: NestState = { kind: "idle" };

/**
 * The search for one roll, begun by hand and never by typing: another order ends it and forgets its lay. Stopped, it keeps the best so
 * far.
 */
export function useNest(order: NestOrder) {
  const key = JSON.stringify(order);
  const [held, setHeld] = useState<{ readonly key: string; readonly state: NestState }>({ key, state: IDLE });
  const worker = useRef<Worker | null>(null);
  const end = useCallback(() => {
    worker.current?.terminate();
    worker.current = null;
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another order ends the search for this one
  useEffect(() => end, [key, end]);
  const state = held.key === key ? held.state : IDLE;
  const start = () => {
    end();
    const set = (next: NestState) => setHeld({ key, state: next });
    const begun = new Worker(new URL("./nestWorker.ts", import.meta.url), { type: "module" });
    worker.current = begun;
    begun.addEventListener("message", ({ data: said }: MessageEvent<NestAnswer>) => {
      if (worker.current !== begun) return;
      if (said.kind === "progress") set({ kind: "running", progress: said.progress });
      else {
        set({ kind: "done", lay: said.lay, isWhole: true });
        end();
      }
    });
    begun.addEventListener("error", () => {
      set({ kind: "failed" });
      end();
    });
    begun.postMessage({ order, search: SEARCH });
    set({ kind: "running", progress: null });
  };
  const stop = () => {
    end();
    const best = state.kind === "running" ? state.progress?.best : undefined;
    setHeld({ key, state: best === undefined ? IDLE : { kind: "done", lay: best, isWhole: false } });
  };
  return { state, start, stop };
}
