/**
 * Places for labels along a line so that none overlaps, each as near to its own mark as its neighbours allow and in the
 * order of the marks. Method: push apart from the low end, then back from the high end, then centre what is left over.
 * @param marks where the labels belong, ascending, in any unit
 * @param gap the least distance between two labels in the same unit
 * @param from, to the ends that labels may not pass; where they do not all fit, the spacing shrinks evenly
 */
export function spreadLabels(
  marks: readonly number[],
  { gap, from, to }: { readonly gap: number; readonly from: number; readonly to: number },
): number[] {
  if (marks.length === 0) return [];
  const step = Math.min(gap, (to - from) / Math.max(1, marks.length - 1));
  const low: number[] = [];
  marks.forEach((mark, i) => {
    low.push(Math.max(mark, i === 0 ? from : (low[i - 1] ?? from) + step));
  });
  const high: number[] = [];
  for (let i = marks.length - 1; i >= 0; i--) {
    high[i] = Math.min(marks[i] ?? to, i === marks.length - 1 ? to : (high[i + 1] ?? to) - step);
  }
  const middle = marks.map((_, i) => ((low[i] ?? 0) + (high[i] ?? 0)) / 2);
  const placed: number[] = [];
  middle.forEach((at, i) => {
    const least = i === 0 ? from : (placed[i - 1] ?? from) + step;
    placed.push(Math.min(Math.max(at, least), to - step * (marks.length - 1 - i)));
  });
  return placed;
}
