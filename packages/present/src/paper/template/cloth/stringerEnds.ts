import type { CutPiece } from "./CutPiece";

type FlatPoint = CutPiece["pattern"]["points"][number];

/**
 * Where the stringer line enters a piece at its tail end and leaves it at its nose end, on the flat; null where it never meets it. The
 * piece lies turned so that its warp runs along, so the stringer stands at the angle between them.
 */
export function stringerEnds({ pattern, piece, hangsM }: CutPiece): readonly [FlatPoint, FlatPoint] | null {
  const angleRad = piece.extent?.angleRad ?? 0;
  const [cos, sin] = [Math.cos(angleRad), Math.sin(angleRad)];
  const onBoard = pattern.points.map(({ alongM, acrossM }) => ({
    alongM: cos * alongM - sin * acrossM,
    offM: sin * alongM + cos * acrossM,
  }));
  const crossingsM = onBoard.flatMap((from, i) => {
    const to = onBoard[(i + 1) % onBoard.length];
    if (to === undefined || from.offM >= 0 === to.offM >= 0) return [];
    const share = from.offM / (from.offM - to.offM);
    return [from.alongM + share * (to.alongM - from.alongM)];
  });
  if (crossingsM.length === 0) return null;
  const at = (onStringerM: number): FlatPoint => ({ alongM: cos * onStringerM, acrossM: -sin * onStringerM });
  return [at(Math.min(...crossingsM) - hangsM), at(Math.max(...crossingsM) + hangsM)];
}
