/** Area of a round piece, from edge to edge. */
export function discM2(acrossM: number): number {
  return (Math.PI * acrossM ** 2) / 4;
}
