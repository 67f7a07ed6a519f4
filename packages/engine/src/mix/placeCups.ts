/** Outline of a board, from the tail on. */
export type OutlinePoints = ReadonlyArray<{
  readonly fromTailM: number;
  readonly leftM: number;
  readonly rightM: number;
}>;

/** The stretch of the board that one cup covers. */
export interface Stretch {
  readonly fromTailM: number;
  readonly toM: number;
}

/**
 * Equal shares of a face, one for each cup, from the nose to the tail, so that one wet edge walks along the board (declared
 * convention). By the outline's width; laps go with their stretch.
 * @param outline in order from the tail
 */
export function placeCups(outline: OutlinePoints, count: number): readonly Stretch[] {
  const first = outline[0];
  if (first === undefined) return [];
  const areas = [0];
  outline.slice(1).forEach((to, i) => {
    const from = outline[i]!;
    const wide = (from.leftM + from.rightM + to.leftM + to.rightM) / 2;
    areas.push(areas[i]! + wide * (to.fromTailM - from.fromTailM));
  });
  const whole = areas.at(-1)!;
  const cut = (share: number) => placeOf(outline, areas, share * whole);
  return Array.from({ length: count }, (_, i) => ({
    fromTailM: cut((count - 1 - i) / count),
    toM: cut((count - i) / count),
  }));
}

function placeOf(outline: OutlinePoints, areas: readonly number[], wanted: number): number {
  const i = areas.findIndex((area) => area >= wanted);
  if (i < 0) return outline.at(-1)!.fromTailM;
  if (i === 0) return outline[0]!.fromTailM;
  const [before, after] = [areas[i - 1]!, areas[i]!];
  const share = after > before ? (wanted - before) / (after - before) : 0;
  const [from, to] = [outline[i - 1]!.fromTailM, outline[i]!.fromTailM];
  return from + share * (to - from);
}
