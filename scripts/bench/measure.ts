export interface Timing {
  readonly medianMs: number;
  readonly p10Ms: number;
  readonly p90Ms: number;
}

/** How long a call takes once it is warm: the median of many calls, and the spread of four fifths of them. */
export function measureTime(call: () => unknown, { warmUp = 40, runs = 120 } = {}): Timing {
  for (let i = 0; i < warmUp; i++) keep(call());
  const times = Array.from({ length: runs }, () => {
    const began = process.hrtime.bigint();
    keep(call());
    return Number(process.hrtime.bigint() - began) / 1e6;
  });
  return timingOf(times);
}

/** The same of a call that is waited for. */
export async function measureWait(
  call: () => Promise<unknown>,
  { warmUp = 5, runs = 25 } = {},
): Promise<Timing> {
  for (let i = 0; i < warmUp; i++) keep(await call());
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const began = process.hrtime.bigint();
    keep(await call());
    times.push(Number(process.hrtime.bigint() - began) / 1e6);
  }
  return timingOf(times);
}

function timingOf(times: readonly number[]): Timing {
  return { medianMs: quantile(times, 0.5), p10Ms: quantile(times, 0.1), p90Ms: quantile(times, 0.9) };
}

/**
 * Bytes that a warm call allocates. Wants `--expose-gc` and a young generation that holds a whole call, so that nothing is
 * swept between the two looks at the heap.
 */
export function measureBytes(call: () => unknown, { warmUp = 40, runs = 30 } = {}): number {
  for (let i = 0; i < warmUp; i++) keep(call());
  const sizes = Array.from({ length: runs }, () => {
    globalThis.gc?.();
    const before = process.memoryUsage().heapUsed;
    keep(call());
    return process.memoryUsage().heapUsed - before;
  });
  return quantile(sizes, 0.5);
}

let kept: unknown;
/** What nobody looks at might not be worked out at all. */
function keep(result: unknown): void {
  kept = result ?? kept;
}

function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = share * (sorted.length - 1);
  const below = sorted[Math.floor(at)] ?? Number.NaN;
  const above = sorted[Math.ceil(at)] ?? Number.NaN;
  return below + (above - below) * (at - Math.floor(at));
}
