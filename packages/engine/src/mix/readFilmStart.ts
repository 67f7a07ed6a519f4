import type { MixEntry, MixedEntry, TouchedEntry } from "./MixEntry";
import type { ShopAir } from "./ShopAir";
import { sortTouches } from "./sortTouches";
import { parseWallTimeS } from "./wallTime";

/** A coat that is on the board, as the record tells it; times on the scale of the shop's air. */
export interface FilmStart {
  /** Wall time of the last cup's hardener, as the record writes it. */
  readonly at: string;
  readonly startS: number;
  readonly firstCupEarlierS: number;
  /** Hardener over base of all its cups together. */
  readonly dose: number;
  readonly touches: ReadonlyArray<{ readonly feels: TouchedEntry["feels"]; readonly afterS: number }>;
}

/**
 * When a coat's cups were mixed, with what dose, and what fingertips felt afterwards.
 * @returns null where no cup of it is recorded with its time, or the air of that time is not known
 */
export function readFilmStart(coatId: string, record: readonly MixEntry[], air: ShopAir): FilmStart | null {
  const cups = record.flatMap((entry) =>
    entry.kind === "mixed" && entry.coat === coatId ? timed(entry) : [],
  );
  const [first, last] = [least(cups), most(cups)];
  if (first === undefined || last === undefined) return null;
  const startS = air.placeOf(last.wallS);
  const baseKg = cups.reduce((sum, { entry }) => sum + entry.baseKg, 0);
  if (startS === null || !(baseKg > 0)) return null;
  const touches = sortTouches(
    record.filter((entry) => entry.kind === "touched").filter(({ coat }) => coat === coatId),
  ).kept.flatMap(({ entry: { feels }, wallS }) =>
    wallS > last.wallS ? [{ feels, afterS: wallS - last.wallS }] : [],
  );
  return {
    at: last.entry.at ?? "",
    startS,
    firstCupEarlierS: last.wallS - first.wallS,
    dose: cups.reduce((sum, { entry }) => sum + entry.hardenerKg, 0) / baseKg,
    touches,
  };
}

interface Timed<Entry> {
  readonly entry: Entry;
  readonly wallS: number;
}

function timed<Entry extends MixedEntry>(entry: Entry): readonly Timed<Entry>[] {
  const wallS = entry.at === undefined ? null : parseWallTimeS(entry.at);
  return wallS === null ? [] : [{ entry, wallS }];
}

const least = <T>(cups: readonly Timed<T>[]) => [...cups].sort((a, b) => a.wallS - b.wallS).at(0);
const most = <T>(cups: readonly Timed<T>[]) => [...cups].sort((a, b) => a.wallS - b.wallS).at(-1);
