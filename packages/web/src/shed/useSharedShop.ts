import { useCallback, useEffect, useRef, useState } from "react";
import type { ShopAnswer, ShopAsked } from "./sharedShop";

export type SharedState =
  | { readonly kind: "idle" }
  | { readonly kind: "running" }
  | { readonly kind: "failed" }
  | { readonly kind: "done"; readonly answer: ShopAnswer };

/** The shop's days, laid out by hand and never by typing: what is asked next ends what is asked now. */
export function useSharedShop() {
  const [state, setState] = useState<SharedState>({ kind: "idle" });
  const worker = useRef<Worker | null>(null);
  const end = useCallback(() => {
    worker.current?.terminate();
    worker.current = null;
  }, []);
  useEffect(() => end, [end]);
  const forget = useCallback(() => {
    end();
    setState({ kind: "idle" });
  }, [end]);
  const start = (asked: ShopAsked) => {
    end();
    const begun = new Worker(new URL("./shopWorker.ts", import.meta.url), { type: "module" });
    worker.current = begun;
    begun.addEventListener("message", ({ data }: MessageEvent<ShopAnswer>) => {
      if (worker.current !== begun) return;
      setState({ kind: "done", answer: data });
      end();
    });
    begun.addEventListener("error", () => {
      setState({ kind: "failed" });
      end();
    });
    begun.postMessage(asked);
    setState({ kind: "running" });
  };
  return { state, start, forget };
}
