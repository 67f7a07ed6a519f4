const SAMPLES = 120;

/** Largest value of a smooth function along the board and where: the best of many places, made sharper by a parabola. */
export function findMost(
  at: (xM: number) => number,
  lengthM: number,
): { readonly xM: number; readonly value: number } {
  const step = lengthM / SAMPLES;
  let best = 1;
  for (let i = 1; i < SAMPLES; i++) if (at(i * step) > at(best * step)) best = i;
  const [a, b, c] = [at((best - 1) * step), at(best * step), at((best + 1) * step)];
  const bend = a - 2 * b + c;
  const xM = bend < 0 ? (best + Math.min(Math.max((a - c) / (2 * bend), -1), 1)) * step : best * step;
  return { xM, value: Math.max(at(xM), b) };
}
