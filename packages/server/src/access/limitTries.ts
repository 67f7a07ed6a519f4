const MOST = 10;
const WITHIN_MS = 10 * 60_000;
const ADDRESSES_KEPT = 1000;

export interface TryLimit {
  /** How many seconds this address has to wait; 0 where it may try. */
  waitS(address: string): number;
  /** It tried and was wrong. */
  count(address: string): void;
}

/** Ten wrong tries from one address within ten minutes, then none until they have passed. */
export function limitTries(now: () => Date): TryLimit {
  // In the order in which they began, so that the oldest stand first.
  const tried = new Map<string, { fromMs: number; count: number }>();
  const current = (address: string) => {
    const entry = tried.get(address);
    if (entry !== undefined && now().getTime() < entry.fromMs + WITHIN_MS) return entry;
    tried.delete(address);
    return undefined;
  };
  return {
    waitS(address) {
      const entry = current(address);
      if (entry === undefined || entry.count < MOST) return 0;
      return Math.ceil((entry.fromMs + WITHIN_MS - now().getTime()) / 1000);
    },
    count(address) {
      const entry = current(address);
      if (entry !== undefined) {
        entry.count++;
        return;
      }
      const [oldest] = tried.keys();
      if (tried.size >= ADDRESSES_KEPT && oldest !== undefined) tried.delete(oldest);
      tried.set(address, { fromMs: now().getTime(), count: 1 });
    },
  };
}
