/** A list of noughts. A typed array costs many times as much to make, and the fits make hundreds of short ones in a plan. */
export function zeros(count: number): number[] {
  return new Array<number>(count).fill(0);
}
