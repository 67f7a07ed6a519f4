/** Coefficients of the error function's rational approximation, Abramowitz and Stegun 7.1.26 (from memory); off by 1.5e-7 at most. */
const P = 0.3275911;
const A = [0.254829592, -0.284496736, 1.421413741, -1.453152027, 1.061405429];

/** Share of a normal distribution that lies below so many standard deviations from its middle. */
export function normalShare(deviations: number): number {
  const x = Math.abs(deviations) / Math.SQRT2;
  const t = 1 / (1 + P * x);
  const series = A.reduceRight((sum, a) => (sum + a) * t, 0);
  const above = (series * Math.exp(-x * x)) / 2;
  return deviations < 0 ? above : 1 - above;
}
