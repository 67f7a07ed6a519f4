/** From a range of values to a range of places; the middle where all values are alike. */
export function scale(values: readonly number[], fromMm: number, toMm: number): (value: number) => number {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  if (most === least) return () => (fromMm + toMm) / 2;
  return (value) => fromMm + ((value - least) / (most - least)) * (toMm - fromMm);
}
