import type { EdgePoint } from "./EdgePoint";

/** Places in the first and last lap, where the widened edge turns in a quarter circle. */
const END_PLACES = 8;

/**
 * One side's edge moved out by the lap, everywhere square to it: the edge that a disc of the lap's radius rolls along. The edge is a
 * function of the place along the board, and so is the result, which begins and ends on the centreline.
 */
export function widenEdge(edge: readonly EdgePoint[], lapM: number): EdgePoint[] {
  if (lapM === 0) return [...edge];
  const placesM = listPlaces(edge, lapM);
  const offsets = edge.slice(1).map((to, i) => offsetSegment(edge[i]!, to, lapM));
  return placesM.map((alongM) => {
    let outM = 0;
    edge.forEach((point, i) => {
      const distanceM = alongM - point.alongM;
      if (Math.abs(distanceM) <= lapM) {
        outM = Math.max(outM, point.outM + Math.sqrt(Math.max(lapM ** 2 - distanceM ** 2, 0)));
      }
      const offset = offsets[i];
      if (offset === undefined) return;
      const { from, to } = offset;
      if (alongM < from.alongM || alongM > to.alongM || !(to.alongM > from.alongM)) return;
      const share = (alongM - from.alongM) / (to.alongM - from.alongM);
      outM = Math.max(outM, from.outM + share * (to.outM - from.outM));
    });
    return { alongM, outM };
  });
}

function listPlaces(edge: readonly EdgePoint[], lapM: number): number[] {
  const firstM = edge[0]!.alongM;
  const lastM = edge.at(-1)!.alongM;
  const ends = Array.from(
    { length: END_PLACES + 1 },
    (_, i) => lapM * Math.cos((Math.PI / 2) * (i / END_PLACES)),
  );
  const placesM = [
    ...ends.map((awayM) => firstM - awayM),
    ...edge.map(({ alongM }) => alongM),
    ...ends.map((awayM) => lastM + awayM),
    ...ends.map((awayM) => firstM + awayM).filter((alongM) => alongM < lastM),
    ...ends.map((awayM) => lastM - awayM).filter((alongM) => alongM > firstM),
  ].sort((a, b) => a - b);
  return placesM.filter((alongM, i) => i === 0 || alongM > placesM[i - 1]!);
}

function offsetSegment(from: EdgePoint, to: EdgePoint, lapM: number) {
  const longM = Math.hypot(to.alongM - from.alongM, to.outM - from.outM);
  if (longM === 0) return undefined;
  const moveAlongM = (-lapM * (to.outM - from.outM)) / longM;
  const moveOutM = (lapM * (to.alongM - from.alongM)) / longM;
  const move = (point: EdgePoint): EdgePoint => ({
    alongM: point.alongM + moveAlongM,
    outM: point.outM + moveOutM,
  });
  return { from: move(from), to: move(to) };
}
