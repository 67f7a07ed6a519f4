import { FLUSH_S, HAND, MACHINE, WIPE_S } from "../constants/sandingWork";
import { EXPERIENCE, type Experience } from "../constants/workTimes";
import { type Band, computeBand } from "../layup/computeBand";
import type { Face } from "../layup/LayupPlan";
import type { Rung } from "./listRungs";

/** What is sanded, as large as it is. */
export interface SandedBoard {
  readonly areaM2: Readonly<Record<Face, number>>;
  readonly railLineM: number;
  readonly boxes: number;
  readonly experience: Experience;
}

/** Of the ladder's work: one paper on one face, on the rails, or the boxes; which of it is asked for. */
interface Share {
  readonly rungs: readonly Rung[];
  readonly faces: readonly Face[];
  readonly withBoxes: boolean;
  /** The rails' strokes alone, without flats and looks. */
  readonly onlyRails?: boolean;
}

/**
 * Hands-on time: area, lanes and passes over how fast pad or block moves, the rails in strokes, a look after each paper, boxes brought
 * flush; times practice. Every rate common practice, no source.
 * @returns s, with its band of about 90 %
 */
export function computeTime(board: SandedBoard, share: Share): Band {
  const drivers = {
    feed: MACHINE.feedMPerS,
    stroke: HAND.strokeMPerS,
    railStrokes: HAND.railStrokes,
    wetStrokes: HAND.wetStrokes,
    wipeS: WIPE_S,
    flushS: FLUSH_S,
  };
  const factor = EXPERIENCE[board.experience].sanding.value;
  return computeBand(drivers, (values) => {
    const flushS = share.withBoxes ? board.boxes * values.flushS : 0;
    const paperS = share.rungs.reduce(
      (sumS, rung) =>
        sumS +
        share.faces.reduce(
          (faceS, face) =>
            faceS +
            (share.onlyRails === true
              ? computeRailS(board, rung, face, values)
              : computeFaceS(board, rung, face, values)),
          0,
        ),
      0,
    );
    return factor * (flushS + paperS);
  });
}

type Rates = Readonly<Record<"feed" | "stroke" | "railStrokes" | "wetStrokes" | "wipeS", number>>;

function computeFaceS(board: SandedBoard, rung: Rung, face: Face, rates: Rates): number {
  const areaM2 = board.areaM2[face];
  if (rung.wet) return (areaM2 * rates.wetStrokes) / (HAND.padWidthM.value * rates.stroke) + rates.wipeS;
  const laneM = MACHINE.padWidthM.value * (1 - MACHINE.overlapShare.value);
  const flatS = (areaM2 * MACHINE.passes.value) / (laneM * rates.feed);
  return flatS + computeRailS(board, rung, face, rates) + rates.wipeS;
}

/** Rails and ends go with the deck, by hand; wet work goes over all in one. */
function computeRailS(board: SandedBoard, rung: Rung, face: Face, rates: Rates): number {
  if (rung.wet || !rung.onEdges || face !== "deck") return 0;
  return (board.railLineM * HAND.railLanes.value * rates.railStrokes) / rates.stroke;
}
