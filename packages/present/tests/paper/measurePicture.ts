import type { Picture } from "./poppler";

/** Darker than this is a line. */
const DARK = 140;

/** Where dark runs lie along a level or upright line of a picture, by their middles weighted by darkness; millimetres. */
export function darkRuns(
  picture: Picture,
  line: { readonly level?: number; readonly upright?: number; readonly from: number; readonly to: number },
): readonly number[] {
  const { pxPerMm } = picture;
  const [first, last] = [Math.round(line.from * pxPerMm), Math.round(line.to * pxPerMm)];
  const runs: number[] = [];
  let [weight, moment, isDark] = [0, 0, false];
  for (let i = first; i <= last; i += 1) {
    const grey = greyAt(picture, line, i);
    if (grey < 250) {
      weight += 255 - grey;
      moment += (255 - grey) * (i + 0.5);
      isDark ||= grey < DARK;
    } else {
      if (isDark) runs.push(moment / weight / pxPerMm);
      [weight, moment, isDark] = [0, 0, false];
    }
  }
  return runs;
}

function greyAt(
  { widthPx, heightPx, pxPerMm, greys }: Picture,
  { level, upright }: { readonly level?: number; readonly upright?: number },
  i: number,
): number {
  const across = Math.floor((level ?? upright ?? 0) * pxPerMm);
  const [x, y] = level === undefined ? [across, i] : [i, across];
  if (x < 0 || y < 0 || x >= widthPx || y >= heightPx) return 255;
  return greys[y * widthPx + x] ?? 255;
}
