import { SUNLIGHT_SET } from "../constants/calendarDefaults";
import type { Sourced } from "../constants/Sourced";
import type { CoatPlan } from "../layup/LayupPlan";
import { listResins } from "../materials/listResins";
import type { MaterialsInput } from "../materials/MaterialsInput";
import type { AirPiece } from "../mix/AirPiece";
import type { MixCoatPlan, MixPlan } from "../mix/MixPlan";
import { makeResinCure, type ResinCure } from "../mix/ResinCure";
import type { ShopAir } from "../mix/ShopAir";
import type { CalendarTask } from "./CalendarTask";
import { type Coat, computeFilm, computeFilmBands, computeGels, filmOfClock } from "./computeFilm";
import type { Film, HandsOn, Moment } from "./Film";
import { listWarm, warmFromS } from "./warmTimes";

/** One board's films. */
export interface Films {
  /** When a step's coat comes to each of its stages, laid between these times; null for work, and where it is not known. */
  readonly at: (task: CalendarTask, laid: HandsOn) => Film | null;
  /** The same with its bands, which take longer to reckon. */
  readonly withBands: (task: CalendarTask, laid: HandsOn) => Film | null;
  /**
   * From when, not before `atS`, the air is warm enough for a step's coat to go on; null where it never is, as far as the air
   * is known.
   */
  readonly warmFromS: (task: CalendarTask, atS: number) => number | null;
  /** As its cups and fingertip tests stand in the record; null where its cups are not recorded. */
  readonly asRecorded: (task: CalendarTask) => Film | null;
}

export interface FilmsBasis {
  readonly mix: MixPlan;
  /** Of the lay-up and of its repairs. */
  readonly coats: ReadonlyArray<Pick<CoatPlan, "id" | "kind">>;
  /** The builder's own resins. */
  readonly materials: MaterialsInput | undefined;
  /** With its pieces in passed seconds. */
  readonly air: ShopAir;
  /** A wall time of the record in passed seconds. */
  readonly parse: (wallText: string) => number | null;
}

/**
 * The films of one board's coats, begun at any time: a coat laid in the evening cures through the night.
 * Method: the mix's own film clock. A stage counts from the hands' going off, a few minutes on the careful side; a window
 * closes by the hardener.
 */
export function buildFilms({ mix, coats, materials, air, parse }: FilmsBasis): Films {
  const resins = listResins(materials);
  const cures = new Map<string, ResinCure>();
  for (const { resin } of mix.coats) {
    const found = Object.hasOwn(resins, resin) ? resins[resin] : undefined;
    if (found !== undefined && !cures.has(resin)) cures.set(resin, makeResinCure(found, air));
  }
  const known = new Map<string, Known | null>();
  const find = (task: CalendarTask): Known | null => {
    const key = task.cures ?? "";
    const before = known.get(key);
    if (before !== undefined) return before;
    const mixed = mix.coats.find(({ id }) => id === task.cures);
    const coat = coats.find(({ id }) => id === task.cures);
    const cure = cures.get(mixed?.resin ?? "");
    const now =
      mixed === undefined || coat === undefined || cure === undefined
        ? null
        : knowCoat(mixed, { cure, pieces: air.pieces }, coat.kind);
    known.set(key, now);
    return now;
  };
  return {
    at: (task, laid) => find(task)?.at(laid) ?? null,
    withBands: (task, laid) => find(task)?.withBands(laid) ?? null,
    warmFromS: (task, atS) => {
      const coat = find(task);
      return coat === null ? atS : coat.warmFromS(atS);
    },
    asRecorded: (task) => {
      const mixed = mix.coats.find(({ id }) => id === task.coat);
      const startS = mixed?.startedAt == null ? null : parse(mixed.startedAt);
      if (startS === null || mixed?.clock == null) return null;
      return filmOfClock(mixed.clock, { fromS: startS, untilS: startS });
    },
  };
}

interface Known {
  readonly at: (laid: HandsOn) => Film;
  readonly withBands: (laid: HandsOn) => Film;
  readonly warmFromS: (atS: number) => number | null;
}

function knowCoat(
  mixed: MixCoatPlan,
  { cure, pieces }: { readonly cure: ResinCure; readonly pieces: readonly AirPiece[] },
  kind: Coat["kind"],
): Known | null {
  const { resin, model, curve } = cure;
  if (resin.kind === "sunlight") return { at: setByLight, withBands: setByLight, warmFromS: (atS) => atS };
  if (model === null || curve === null || mixed.hardenerRatio === null) return null;
  const firstCupEarlierS = mixed.cups.at(-1)?.mixAtS ?? 0;
  const coat: Coat = { kind, resin, model, curve, dose: mixed.hardenerRatio, firstCupEarlierS };
  const gels = computeGels(coat);
  const knownUntilS = pieces.at(-1)?.toS ?? 0;
  const warm = listWarm(pieces, resin.leastCureTemperatureK.value);
  return {
    at: (laid) => computeFilm(coat, gels, laid),
    withBands: (laid) => computeFilmBands(coat, laid),
    warmFromS: (atS) => (atS < knownUntilS ? warmFromS(warm, atS) : atS),
  };
}

/** Light sets the whole coat when the builder lets it: no window closes before, and the tape is pulled before. */
function setByLight({ endS }: HandsOn): Film {
  const after = ({ value, low = value, high = value }: Sourced): Moment => ({
    atS: endS + value,
    lowS: endS + low,
    highS: endS + high,
  });
  const set = after(SUNLIGHT_SET.setS);
  return {
    trim: set,
    trimUntil: null,
    tape: null,
    tapeUntil: null,
    flip: set,
    recoat: set,
    recoatUntil: null,
    sandable: set,
    full: after(SUNLIGHT_SET.fullS),
  };
}
