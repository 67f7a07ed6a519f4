import type { Side } from "../../survey/Side";
import type { EdgePoint } from "./EdgePoint";
import type { FlatEnd, FlatFace } from "./FlatFace";

/**
 * One side's fold line on the flat, the rail's widest line rolled out, from the tail's end to the nose's: up the tail's flat end,
 * along the rail, down the nose's. Never runs back along the board.
 */
export function rollOutEdge(flat: FlatFace, side: Side): EdgePoint[] {
  const lastM = flat.stations.at(-1)!.alongM;
  const rail = flat.stations.map((station) => ({
    alongM: station.alongM,
    outM: side === "left" ? station.leftM : station.rightM,
  }));
  return [
    ...hangEnd(flat.tail, side).map(({ acrossM, deepM }) => ({ alongM: -deepM, outM: acrossM })),
    ...rail,
    ...hangEnd(flat.nose, side)
      .map(({ acrossM, deepM }) => ({ alongM: lastM + deepM, outM: acrossM }))
      .reverse(),
  ];
}

/** From the deepest place, on the centreline, to the rail; a concave's hump near the rail is spanned. */
function hangEnd(end: FlatEnd, side: Side): FlatEnd[Side] {
  const inwards = end[side];
  let deepestM = 0;
  const kept = inwards.filter(({ deepM }) => {
    if (deepM < deepestM) return false;
    deepestM = deepM;
    return true;
  });
  return kept.reverse();
}
