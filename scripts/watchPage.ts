export interface Watched {
  /** The browser's own figure for each key, by its interaction. */
  readonly keyMs: Record<number, number>;
  /** From a key to the frame in which the outline has moved; only keys that moved it. */
  readonly planMs: number[];
  shift: number;
  /** From the touch that opened it to the frame that shows it. */
  solidMs: number | null;
}

/** Runs in the page before anything else of it. */
export function watch(): void {
  const watched: Watched = { keyMs: {}, planMs: [], shift: 0, solidMs: null };
  Object.assign(window, { watched });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & { interactionId: number })[]) {
      if (entry.interactionId === 0 || !entry.name.startsWith("key")) continue;
      watched.keyMs[entry.interactionId] = Math.max(watched.keyMs[entry.interactionId] ?? 0, entry.duration);
    }
  }).observe({ type: "event", durationThreshold: 16, buffered: true } as PerformanceObserverInit);
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
    })[])
      if (!entry.hadRecentInput) watched.shift += entry.value;
  }).observe({ type: "layout-shift", buffered: true });
  let keyAtMs: number | null = null;
  let touchAtMs: number | null = null;
  addEventListener("keydown", ({ timeStamp }) => (keyAtMs = timeStamp), true);
  addEventListener("click", ({ timeStamp }) => (touchAtMs = timeStamp), true);
  new MutationObserver((changes) => {
    for (const { target, attributeName } of changes) {
      const isSolid = attributeName === "data-drawn";
      const fromMs = isSolid ? touchAtMs : keyAtMs;
      if (fromMs === null || !(isSolid || (target as Element).closest("#measure .layer-outline") !== null))
        continue;
      if (isSolid) touchAtMs = null;
      else keyAtMs = null;
      // In the frame that comes, and told when that is on its way to the screen.
      requestAnimationFrame(() =>
        setTimeout(() => {
          const tookMs = performance.now() - fromMs;
          if (isSolid) watched.solidMs = tookMs;
          else watched.planMs.push(tookMs);
        }, 0),
      );
    }
  }).observe(document, { subtree: true, attributeFilter: ["d", "data-drawn"] });
}
