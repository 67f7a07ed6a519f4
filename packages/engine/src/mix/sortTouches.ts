import type { TouchedEntry } from "./MixEntry";
import { parseWallTimeS } from "./wallTime";

export interface TimedTouch {
  readonly entry: TouchedEntry;
  readonly wallS: number;
}

/** One coat's fingertip tests in order of time, and those that a later entry contradicts. */
export interface SortedTouches {
  readonly kept: readonly TimedTouch[];
  readonly dropped: ReadonlyArray<{ readonly touch: TimedTouch; readonly by: TimedTouch }>;
}

const ORDER = ["wet", "strings", "leathery", "hard"] as const;

/**
 * A film only gets harder: of two tests that say otherwise the one that was entered later stands, and the other moves no
 * clock. Declared convention.
 * @param entries of one coat, in the order of the record; one without a time is left out
 */
export function sortTouches(entries: readonly TouchedEntry[]): SortedTouches {
  let kept: readonly TimedTouch[] = [];
  const dropped: Array<SortedTouches["dropped"][number]> = [];
  for (const entry of entries) {
    const wallS = entry.at === undefined ? null : parseWallTimeS(entry.at);
    if (wallS === null) continue;
    const by = { entry, wallS };
    dropped.push(...kept.filter((touch) => contradicts(touch, by)).map((touch) => ({ touch, by })));
    kept = [...kept.filter((touch) => !contradicts(touch, by)), by];
  }
  return { kept: kept.toSorted((a, b) => a.wallS - b.wallS), dropped };
}

function contradicts(a: TimedTouch, b: TimedTouch): boolean {
  const [first, second] = a.wallS <= b.wallS ? [a, b] : [b, a];
  const gain = ORDER.indexOf(second.entry.feels) - ORDER.indexOf(first.entry.feels);
  return first.wallS === second.wallS ? gain !== 0 : gain < 0;
}
