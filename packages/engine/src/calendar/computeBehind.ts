import type { Job } from "./Bench";

/**
 * How much lies behind each step until the end: its own hands-on time and the longest way of waits and hands-on times after
 * it, as the steps give them, each after those it needs.
 */
export function computeBehind({ tasks, followers }: Job): ReadonlyMap<string, number> {
  const behindS = new Map<string, number>();
  for (const task of tasks.toReversed()) {
    const after = (followers.get(task.id) ?? []).map(
      ({ task: { id }, need }) => (need.waitS ?? 0) + (behindS.get(id) ?? 0),
    );
    behindS.set(task.id, task.handsOnS + Math.max(0, ...after));
  }
  return behindS;
}
