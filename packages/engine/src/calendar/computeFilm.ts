import { CURE_STAGES, type CureStage, type EarlyStage } from "../constants/cureStages";
import type { SpreadKind } from "../constants/workTimes";
import type { Counting, CureCurve } from "../mix/buildCureCurve";
import { computeFilmClock, doseFactor, type FilmTask, hasWax } from "../mix/computeFilmClock";
import type { FilmClock } from "../mix/MixPlan";
import type { Film, HandsOn, Moment } from "./Film";

/** One coat as it cures, whenever it is laid. */
export interface Coat extends Omit<FilmTask, "startS"> {
  readonly kind: SpreadKind;
}

/** How far a coat must come for each stage, in gel times of its resin's reference cup. */
type Gels = Readonly<
  Record<Exclude<CureStage | EarlyStage, "firm" | "strings"> | "recoatUntil", number | null>
>;

export function computeGels(coat: Coat): Gels {
  const { filmOverPot, gels } = CURE_STAGES[coat.resin.kind];
  const times = filmOverPot.value * doseFactor(coat) * Math.exp(coat.pace?.log ?? 0);
  const { temperatureK, durationS } = coat.resin.recoatUntil;
  const isWaxed = hasWax(coat.kind, coat.resin);
  const [isCut, isTape] = [coat.kind === "laminate", isTaped(coat.kind)];
  return {
    trimFrom: isCut ? times * gels.trimFrom.value : null,
    pullTape: isTape ? times * gels.pullTape.value : null,
    trimUntil: isCut || isTape ? times * gels.trimUntil.value : null,
    flip: times * gels.flip.value,
    recoatFrom: isWaxed ? null : times * gels.recoatFrom.value,
    recoatUntil: isWaxed
      ? null
      : durationS.value / coat.model.gelS({ ...coat.model.reference, temperatureK }),
    sandable: times * (coat.kind === "box" ? gels.firm.value : gels.sandable.value),
    full: times * gels.full.value,
  };
}

/**
 * When one coat comes to each stage: the middle of what `computeFilmClock` gives, read straight off the curve, for a search
 * asks thousands of times.
 */
export function computeFilm(coat: Coat, gels: Gels, laid: HandsOn): Film {
  const startS = laid.beginS + coat.firstCupEarlierS;
  const from = (wanted: number | null) =>
    read(coat.curve, { startS, wanted, counting: "credited" }, laid.endS);
  const until = (wanted: number | null, fromS: number) =>
    read(coat.curve, { startS: fromS, wanted, counting: "closing" }, fromS);
  const isTape = isTaped(coat.kind);
  const hardens = until(gels.trimUntil, laid.beginS);
  return {
    trim: from(gels.trimFrom),
    trimUntil: isTape ? null : hardens,
    tape: from(gels.pullTape),
    tapeUntil: isTape ? hardens : null,
    flip: from(gels.flip),
    recoat: from(gels.recoatFrom),
    recoatUntil: until(gels.recoatUntil, startS),
    sandable: from(gels.sandable),
    full: from(gels.full),
  };
}

/** The same with its bands, by the mix's own clock. */
export function computeFilmBands(coat: Coat, laid: HandsOn): Film {
  const startS = laid.beginS + coat.firstCupEarlierS;
  const clock = computeFilmClock({ ...coat, startS });
  const soft = isTaped(coat.kind) ? computeFilmClock({ ...coat, startS, kind: "laminate" }) : null;
  const film = filmOfClock(clock, { fromS: laid.endS, untilS: startS });
  return {
    ...film,
    tapeUntil: soft && band(startS, [soft.trimUntilS, soft.trimUntilLowS, soft.trimUntilHighS]),
  };
}

/**
 * A film clock of the mix in passed seconds.
 * @param from what its stages, and its windows' ends, count from
 */
export function filmOfClock(
  clock: FilmClock,
  { fromS, untilS }: { readonly fromS: number; readonly untilS: number },
): Film {
  return {
    trim: band(fromS, [clock.trimFromS, clock.trimFromLowS, clock.trimFromHighS]),
    trimUntil: band(untilS, [clock.trimUntilS, clock.trimUntilLowS, clock.trimUntilHighS]),
    tape: band(fromS, [clock.pullTapeS, clock.pullTapeLowS, clock.pullTapeHighS]),
    tapeUntil: null,
    flip: band(fromS, [clock.flipS, clock.flipLowS, clock.flipHighS]),
    recoat: band(fromS, [clock.recoatFromS, clock.recoatFromLowS, clock.recoatFromHighS]),
    recoatUntil: band(untilS, [clock.recoatUntilS, clock.recoatUntilLowS, clock.recoatUntilHighS]),
    sandable: band(fromS, [clock.sandableS, clock.sandableLowS, clock.sandableHighS]),
    full: band(fromS, [clock.fullS, clock.fullLowS, clock.fullHighS]),
  };
}

/** Coats whose edge is taped, and the tape pulled while they are soft. */
function isTaped(kind: SpreadKind): boolean {
  return kind === "fill" || kind === "gloss";
}

interface Reading {
  readonly startS: number;
  readonly wanted: number | null;
  readonly counting: Counting;
}

function read(curve: CureCurve, { startS, wanted, counting }: Reading, fromS: number): Moment | null {
  const takesS = wanted === null ? null : curve.readyS(startS, wanted, counting);
  return takesS === null ? null : { atS: fromS + takesS, lowS: null, highS: null };
}

function band(
  fromS: number,
  [takesS, lowS, highS]: readonly [number | null, number | null, number | null],
): Moment | null {
  if (takesS === null) return null;
  return {
    atS: fromS + takesS,
    lowS: lowS === null ? null : fromS + lowS,
    highS: highS === null ? null : fromS + highS,
  };
}
